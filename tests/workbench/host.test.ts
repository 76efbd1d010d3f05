import { ICommandService, RedoCommand, UndoCommand } from "@univerjs/core";
import { openHeadless } from "../../src/workbench/engine/node";
import type { Block } from "../../src/sheet/port";
import { hostContract } from "../host/contract";

hostContract(
  "the workbench, headless",
  { protection: false, filters: false, charts: false, cleanFailures: true },
  async (book) => {
    const open = await openHeadless(book);
    const { WorkbenchHost } = await import("../../src/host/workbench");
    const host = new WorkbenchHost(open.injector);
    const command = open.injector.get(ICommandService);
    const settled = async (id: string): Promise<void> => {
      await command.executeCommand(id);
      await open.computed();
    };
    return {
      host,
      undo: () => settled(UndoCommand.id),
      redo: () => settled(RedoCommand.id),
      select: async (block: Block) => {
        await host.write("Select", [{ do: "select", block }]);
      },
      protect: () => Promise.resolve(),
      filter: () => Promise.resolve(),
      close: () => {
        open.close();
      },
    };
  },
);
