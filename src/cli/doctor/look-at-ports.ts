/** The ports that the commands want. */
import { type Finding, mend, mind, well } from "./finding";
import { portState } from "./port-state";

export interface WantedPort {
  readonly port: number;
  readonly command: string;
}

export const wantedPorts: readonly WantedPort[] = [
  { port: 3000, command: "npm start" },
  { port: 3001, command: "npm run serve:excel" },
];

/**
 * A taken port may well be our own server. @param isOurs  whether what answers there is Titrebook
 */
export async function lookAtPort(
  { port, command }: WantedPort,
  isOurs: (port: number) => Promise<boolean>,
): Promise<Finding> {
  const about = `port ${port}`;
  switch (await portState(port)) {
    case "free":
      return well(about, `Free for ${command}.`);
    case "forbidden":
      return mend(about, `This account may not use it: PORT=3100 ${command}.`);
    case "taken":
      return (await isOurs(port))
        ? mind(about, "Titrebook is already being served there.")
        : mend(about, `Another program has it: stop that one, or PORT=${port + 100} ${command}.`);
  }
}
