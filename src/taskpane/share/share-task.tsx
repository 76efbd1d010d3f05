/** The task of sharing: a copy for somebody who has not got the add-in. The workbook itself stays as it is. */
import "../widgets/widgets.css";
import "../task.css";
import "./share.css";
import { Button, Spinner } from "@fluentui/react-components";
import { useEffect, useReducer, useRef } from "react";
import type { Host } from "../../sheet/port";
import { isRefused } from "../../sheet/refusal";
import { Say } from "../widgets/say";
import { handOver, makeCopy, whatIsOffered } from "./make-copy";
import { ReportView } from "./report-view";
import { addressOf, forgetFile } from "./save-file";
import { canMake, firstState, type Handed, type Kind, type Made, reduceShare } from "./share-state";

export interface ShareTaskProps {
  readonly host: Host;
  /** The time now; the machine's own where it is left out. */
  readonly clock?: () => Date;
}

const choices: readonly { readonly kind: Kind; readonly name: string; readonly says: string }[] = [
  {
    kind: "partner",
    name: "Partner copy",
    says: "TITRE functions become plain formulas. Whoever gets it can change a titre in any spreadsheet program, and nearly all answers follow.",
  },
  {
    kind: "numbers",
    name: "Numbers only",
    says: "Every formula goes and every figure stays, to be read or printed.",
  },
];

/** Long enough for the page to show what it is about to do. */
const shown = (): Promise<void> =>
  new Promise((done) => {
    setTimeout(done, 50);
  });

/** The file to save: asked for by the link, and once by itself where it is the only way to it. */
function SaveLink({ made, asksItself }: { readonly made: Made; readonly asksItself: boolean }) {
  const link = useRef<HTMLAnchorElement>(null);
  useEffect(() => {
    const at = link.current;
    if (!at) return undefined;
    const address = addressOf(made.bytes);
    at.href = address;
    if (asksItself) {
      at.click();
      at.focus();
    }
    return () => {
      forgetFile(address);
    };
  }, [made, asksItself]);
  return (
    <p>
      {/* its address is known once the page is drawn */}
      <a ref={link} className="save-link" href="#copy" download={made.fileName}>
        Save {made.fileName}
      </a>
    </p>
  );
}

const isToSave = ({ how }: Handed): boolean => how === "to-save";

/** Where the copy is, and what is left to do with it. */
function HandedOver({ handed }: { readonly handed: Handed }) {
  if (handed.how === "opened") {
    return (
      <Say tone="know">
        The copy is open as a new workbook, in a window of its own. It is not saved yet: save it
        under a name of your own.
      </Say>
    );
  }
  if (handed.sentence === undefined) return <Say tone="know">The copy is made.</Say>;
  return <Say tone="check">{handed.sentence}</Say>;
}

export function ShareTask({ host, clock = () => new Date() }: ShareTaskProps) {
  const [state, act] = useReducer(reduceShare, firstState);
  useEffect(() => {
    void whatIsOffered(host).then(act);
    return host.watch(({ event }) => {
      if (event === "change") act({ do: "changed" });
    });
  }, [host]);

  const make = async (kind: Kind): Promise<void> => {
    act({ do: "make", kind });
    await shown();
    const made = await makeCopy(host, kind, clock());
    act(isRefused(made) ? { do: "failed", sentence: made.sentence } : await handOver(host, made));
  };

  return (
    <div className="task share">
      <h2>For a partner</h2>
      <p>A copy of this workbook for somebody without Titrebook. Your own file stays as it is.</p>
      {state.at === "not-offered" ? (
        <Say tone="know">{state.sentence}</Say>
      ) : (
        choices.map(({ kind, name, says }) => (
          <div key={kind} className="share-choice">
            <Button
              size="large"
              appearance={kind === "partner" ? "primary" : "secondary"}
              className="wide"
              aria-describedby={`share-${kind}`}
              disabledFocusable={!canMake(state)}
              onClick={() => void make(kind)}
            >
              {name}
            </Button>
            <p id={`share-${kind}`} className="soft">
              {says}
            </p>
          </div>
        ))
      )}
      <div role="status">
        {state.at === "making" ? <Spinner size="small" label="Making the copy." /> : null}
        {state.at === "made" ? <HandedOver handed={state.handed} /> : null}
        {state.at === "changed" ? (
          <Say tone="know">The workbook has changed since that copy: make it again.</Say>
        ) : null}
        {state.at === "failed" ? <Say tone="check">{state.sentence}</Say> : null}
      </div>
      {state.at === "made" ? (
        <>
          {state.handed.how === "opened" && !state.handed.isSavable ? null : (
            <SaveLink made={state.made} asksItself={isToSave(state.handed)} />
          )}
          <ReportView report={state.made.report} />
        </>
      ) : null}
    </div>
  );
}
