/** Where the database and the server's secret are kept: TINEWISE_DATA, `data` of the working directory unless set. */
export function dataFolder(): string {
  return process.env.TINEWISE_DATA || 'data';
}
