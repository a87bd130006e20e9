/** Said where a form does its work in the browser. */
export function NoScript() {
  return (
    <noscript>
      <p className="sheet">
        This form needs JavaScript: it draws and judges while you type. Without it, facts are read in from a
        site file or a list.
      </p>
    </noscript>
  );
}
