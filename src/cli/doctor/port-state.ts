/** Whether a port of this machine can be had. */
import { createServer } from "node:net";

export type PortState = "free" | "taken" | "forbidden";

export const portState = (port: number): Promise<PortState> =>
  new Promise((resolve) => {
    const probe = createServer();
    probe.once("error", (error: NodeJS.ErrnoException) => {
      resolve(error.code === "EACCES" ? "forbidden" : "taken");
    });
    probe.listen(port, "127.0.0.1", () => {
      probe.close(() => {
        resolve("free");
      });
    });
  });
