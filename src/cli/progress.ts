/** Shows how far the reading is, on one line of a terminal that is gone when it is done. */

export interface Progress {
  readonly onPage: (done: number, all: number) => void;
  readonly clear: () => void;
}

export interface ProgressStream {
  readonly isTTY?: boolean;
  readonly write: (text: string) => unknown;
}

/** Silent where the stream is no terminal, and while the reading is quick. */
export function progress(
  stream: ProgressStream,
  millisecondsNow: () => number = () => performance.now(),
): Progress {
  if (!stream.isTTY) return { onPage: () => {}, clear: () => {} };
  const started = millisecondsNow();
  let last = started;
  let shown = false;
  return {
    onPage: (done, all) => {
      const now = millisecondsNow();
      if (now - started < patienceMilliseconds || (shown && now - last < betweenMilliseconds)) return;
      stream.write(`${clearLine}Reading: ${done} of ${all} files`);
      last = now;
      shown = true;
    },
    clear: () => {
      if (shown) stream.write(clearLine);
      shown = false;
    },
  };
}

/** Before this, nobody wonders whether the tool still works. */
const patienceMilliseconds = 300;
/** Often enough to be seen moving; a terminal is slow to write to. */
const betweenMilliseconds = 50;
/** ECMA-48: to the start of the line, and erase it. */
const clearLine = '\r\u001B[2K';
