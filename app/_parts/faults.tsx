/** What is wrong with what was typed, said aloud when it appears. */
export function Faults({ faults }: { faults: readonly string[] }) {
  return (
    <div role="alert">
      {faults.map((fault) => (
        <p key={fault} className="fault">
          {fault}
        </p>
      ))}
    </div>
  );
}
