/**
 * How each system is told to trust our authority, for the current user alone, and how to forget it.
 * Only where the spreadsheet program runs: on other systems there is nobody who would ask.
 *
 * The maker's own installer is not used: it knows its authority by name alone, and would take that of
 * another project for ours.
 */
import { X509Certificate } from "node:crypto";
import { readFileSync } from "node:fs";
import { homedir } from "node:os";
import { join } from "node:path";

export interface TrustCommand {
  readonly program: string;
  readonly arguments: readonly string[];
}

export interface Trust {
  readonly trust: TrustCommand;
  readonly forget: TrustCommand;
  /** What the person will see. */
  readonly asks: string;
}

/** The thumbprint by which Windows finds a certificate again: no colons. */
const thumbprint = (authority: string): string =>
  new X509Certificate(readFileSync(authority)).fingerprint.replaceAll(":", "");

/** Undefined where we know of no way. `system` is what Node calls the platform. */
export function trustOn(system: string, authority: string): Trust | undefined {
  if (system === "win32") {
    return {
      trust: { program: "certutil", arguments: ["-user", "-addstore", "Root", authority] },
      forget: {
        program: "certutil",
        arguments: ["-user", "-delstore", "Root", thumbprint(authority)],
      },
      asks: "Windows shows a security warning and asks whether to install the certificate: answer Yes.",
    };
  }
  if (system === "darwin") {
    return {
      trust: {
        program: "security",
        arguments: [
          ...["add-trusted-cert", "-r", "trustRoot", "-p", "ssl"],
          ...["-k", join(homedir(), "Library/Keychains/login.keychain-db"), authority],
        ],
      },
      forget: { program: "security", arguments: ["remove-trusted-cert", authority] },
      asks: "The Mac asks for your password, or your finger, before it trusts the certificate.",
    };
  }
  return undefined;
}

export const asTyped = ({ program, arguments: given }: TrustCommand): string =>
  [program, ...given.map((each) => (/[\s"]/.test(each) ? `"${each}"` : each))].join(" ");

/** For a system without a command of its own. */
export const byHand = (authority: string): string =>
  [
    "This system has no spreadsheet program that would ask for the certificate, so nothing was added to what it trusts.",
    "The page is served all the same. In a browser, open https://localhost:3001/taskpane.html once and accept the warning,",
    `or add ${authority} to the authorities of that browser (Settings, Privacy and security, Certificates).`,
  ].join("\n");
