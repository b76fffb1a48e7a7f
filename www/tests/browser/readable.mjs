// What runs in the page and finds what cannot be read or touched.

/** Texts that cannot be read, since they leave the window, are cut off, or lie upon each other. */
export function unreadableTexts() {
  const found = [];
  const root = document.scrollingElement;
  if (root.scrollWidth > root.clientWidth) found.push(`the page is ${root.scrollWidth} wide in ${root.clientWidth}`);
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  const texts = [];
  for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
    const parent = node.parentElement;
    if (node.data.trim() === "" || !parent.checkVisibility({ visibilityProperty: true, opacityProperty: true })) continue;
    const range = document.createRange();
    range.selectNodeContents(node);
    const isPinned = floats(parent);
    const isOffered = isHidden(parent);
    if (isOffered) continue;
    for (const box of range.getClientRects()) texts.push({ text: node.data.trim(), box, parent, isPinned });
  }
  for (const { text, box, parent } of texts) {
    if ((box.left < -1 || box.right > innerWidth + 1) && !scrolls(parent)) found.push(`“${text}” leaves the window`);
    for (let around = parent; around !== null; around = around.parentElement) {
      const { overflowX, overflowY } = getComputedStyle(around);
      const outer = around.getBoundingClientRect();
      const cuts = (way) => way === "hidden" || way === "clip";
      const isCut =
        (cuts(overflowX) && (box.left < outer.left - 2 || box.right > outer.right + 2)) ||
        (cuts(overflowY) && (box.top < outer.top - 4 || box.bottom > outer.bottom + 4));
      if (isCut && around !== document.body && around !== document.documentElement) found.push(`“${text}” is cut off by ${around.tagName}`);
    }
  }
  for (const [index, one] of texts.entries()) {
    for (const other of texts.slice(index + 1)) {
      if (one.isPinned !== other.isPinned) continue; // What is pinned lies above what is scrolled.
      const across = Math.min(one.box.right, other.box.right) - Math.max(one.box.left, other.box.left);
      const down = Math.min(footOf(one.box), footOf(other.box)) - Math.max(headOf(one.box), headOf(other.box));
      if (across > 2 && down > 2) found.push(`“${one.text}” lies upon “${other.text}”`);
    }
  }
  return found;

  /** Letters fill about the middle of the box that their font sets aside. */
  function headOf({ top, height }) {
    return top + height * 0.2;
  }

  function footOf({ bottom, height }) {
    return bottom - height * 0.2;
  }

  function floats(element) {
    for (let around = element; around !== null; around = around.parentElement) {
      if (["fixed", "sticky"].includes(getComputedStyle(around).position)) return true;
    }
    return false;
  }

  function scrolls(element) {
    for (let around = element; around !== null; around = around.parentElement) {
      if (["auto", "scroll"].includes(getComputedStyle(around).overflowX)) return true;
    }
    return false;
  }

  /** For screen readers only: made as small as a dot. */
  function isHidden(element) {
    for (let around = element; around !== null; around = around.parentElement) {
      const { width, height } = around.getBoundingClientRect();
      if (width <= 1 && height <= 1) return true;
    }
    return false;
  }
}

/** What is touched and measures less than 48 px. */
export function smallTargets() {
  const kinds = "button, input:not([type=radio]), select, textarea, summary, nav a, header a, label:has(input[type=radio])";
  return [...document.querySelectorAll(kinds)]
    .filter((part) => part.checkVisibility())
    .map((part) => ({ part, box: part.getBoundingClientRect() }))
    .filter(({ box }) => box.height < 47.5 || box.width < 47.5)
    .map(({ part, box }) => `${part.outerHTML.slice(0, 80)}: ${box.width.toFixed(0)} × ${box.height.toFixed(0)}`);
}
