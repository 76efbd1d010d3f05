/** The task of sharing: a copy for somebody who has not got the add-in. The workbook itself stays as it is. */
import "../widgets/widgets.css";
import "../task.css";
import "./share.css";
import { Button, Spinner } from "@fluentui/react-components";
import { useEffect, useReducer, useRef } from "react";
import type { Host } from "../../sheet/port";
import { isRefused } from "../../sheet/refusal";
import { Say } from "../widgets/say";
import { makeCopy, whatIsOffered } from "./make-copy";
import { ReportView } from "./report-view";
import { addressOf, forgetFile } from "./save-file";
import { canMake, firstState, type Kind, type Made, reduceShare } from "./share-state";

export interface ShareTaskProps {
  readonly host: Host;
  /** The time now; the machine's own where it is left out. */
  readonly clock?: () => Date;
}

const choices: readonly { readonly kind: Kind; readonly name: string; readonly says: string }[] = [
  {
    kind: "partner",
    name: "Partner copy",
    says: "TITRE functions become plain formulas. Whoever gets it can change a titre in any spreadsheet program, and the answers follow.",
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

/** The file to save: asked for once by itself, and again by the link. */
function SaveLink({ made }: { readonly made: Made }) {
  const link = useRef<HTMLAnchorElement>(null);
  useEffect(() => {
    const at = link.current;
    if (!at) return undefined;
    const address = addressOf(made.bytes);
    at.href = address;
    at.click();
    at.focus();
    return () => {
      forgetFile(address);
    };
  }, [made]);
  return (
    <p>
      {/* its address is known once the page is drawn */}
      <a ref={link} className="save-link" href="#copy" download={made.fileName}>
        Save {made.fileName}
      </a>
    </p>
  );
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
    if (isRefused(made)) act({ do: "failed", sentence: made.sentence });
    else act({ do: "made", made });
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
        {state.at === "made" ? <Say tone="done">The copy is made.</Say> : null}
        {state.at === "changed" ? (
          <Say tone="know">The workbook has changed since that copy: make it again.</Say>
        ) : null}
        {state.at === "failed" ? <Say tone="mind">{state.sentence}</Say> : null}
      </div>
      {state.at === "made" ? (
        <>
          <SaveLink made={state.made} />
          <ReportView report={state.made.report} />
        </>
      ) : null}
    </div>
  );
}
