/**
 * Does something at once, but once in each frame at most: pointers may move more often than is painted. What is called for
 * a second time is done before the frame is painted.
 */
export function oncePerFrame(act: () => void): () => void {
  let done = false;
  let due = false;
  const call = () => {
    if (done) {
      due = true;
      return;
    }
    done = true;
    requestAnimationFrame(() => {
      done = false;
      if (!due) return;
      due = false;
      call();
    });
    act();
  };
  return call;
}
