/** Runs when the page is left, hidden or closed, and when the task is taken away. */
import { useEffect } from "react";

/** @param leaving the same function as long as its work is the same */
export function useLeaving(leaving: () => void): void {
  useEffect(() => {
    window.addEventListener("pagehide", leaving);
    document.addEventListener("visibilitychange", leaving);
    return () => {
      leaving();
      window.removeEventListener("pagehide", leaving);
      document.removeEventListener("visibilitychange", leaving);
    };
  }, [leaving]);
}
