import Link from 'next/link';

/** From a screen that shows a list to the file that holds it, and back from a file. */
export function ListLinks({ list }: { list: string }) {
  return (
    <>
      <Link href={`/import?list=${list}`} className="button">
        Read in a list
      </Link>
      <a href={`/export/${list}.csv`} className="button" download>
        Export as CSV
      </a>
    </>
  );
}
