/** The heading of a part that was asked for. It takes the focus: the button that was pressed is gone. */
import { useEffect, useRef } from "react";

/** @param level of a step's part, where nothing else is said */
export function PartHeading({
  children,
  level: Level = "h3",
}: {
  children: string;
  level?: "h2" | "h3";
}) {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    heading.current?.focus();
  }, []);
  return (
    <Level ref={heading} tabIndex={-1}>
      {children}
    </Level>
  );
}
