/** Follow a talk: one stream of whole states, reopened by itself whenever it is lost. */

const FIRST_WAIT = 1000;
const LONGEST_WAIT = 15000;
/** The server sends something every 15 seconds; after three times that the stream is dead. */
const SILENCE = 45000;

/**
 * @typedef {object} Follow
 * @property {() => string} address where the stream is, asked anew at each opening
 * @property {(state: any) => void} onState
 * @property {(held: boolean) => void} onTouch told when touch is lost and when it is back
 */

/**
 * Start to follow. Returns a function that opens the stream again, as after a change of size.
 * @param {Follow} follow
 */
export function follow({ address, onState, onTouch }) {
  /** @type {EventSource | null} */
  let source = null;
  let wait = FIRST_WAIT;
  let timer = 0;
  let watchdog = 0;

  const again = () => {
    source?.close();
    source = null;
    onTouch(false);
    clearTimeout(timer);
    timer = setTimeout(open, wait);
    wait = Math.min(wait * 2, LONGEST_WAIT);
  };

  const heard = () => {
    clearTimeout(watchdog);
    watchdog = setTimeout(again, SILENCE);
  };

  function open() {
    clearTimeout(timer);
    source?.close();
    heard();
    let order = -1;
    const stream = new EventSource(address());
    source = stream;
    stream.addEventListener("state", (event) => {
      heard();
      const state = JSON.parse(event.data);
      wait = FIRST_WAIT;
      onTouch(true);
      if (state.order < order) return;
      order = state.order;
      onState(state);
    });
    stream.addEventListener("ping", heard);
    stream.addEventListener("error", () => {
      clearTimeout(watchdog);
      if (stream === source) again();
    });
  }

  addEventListener("online", open);
  document.addEventListener("visibilitychange", () => {
    if (!document.hidden && source?.readyState !== EventSource.OPEN) open();
  });
  addEventListener("pagehide", () => source?.close());
  addEventListener("pageshow", (event) => event.persisted && open());
  open();
  return open;
}

/** Return the screen's width in tenths of a percent of its height, as the server draws for it. */
export function wide() {
  return Math.min(4000, Math.max(1333, Math.round((1000 * innerWidth) / innerHeight)));
}

/** Call `then` when the screen's shape has changed and stays so for a moment. */
export function onReshape(/** @type {() => void} */ then) {
  let before = wide();
  let timer = 0;
  addEventListener("resize", () => {
    clearTimeout(timer);
    timer = setTimeout(() => {
      if (wide() === before) return;
      before = wide();
      then();
    }, 300);
  });
}
