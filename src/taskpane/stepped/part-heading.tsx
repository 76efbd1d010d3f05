/** The heading of a part that was asked for. It takes the focus: the button that was pressed is gone. */
import { useEffect, useRef } from "react";

export function PartHeading({ children }: { children: string }) {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    heading.current?.focus();
  }, []);
  return (
    <h3 ref={heading} tabIndex={-1}>
      {children}
    </h3>
  );
}
