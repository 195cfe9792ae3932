// What the pages that the bench's frame is compared with draw: two lanes, each
// a ribbon of points that fades with age, hand, tether and head.
"use strict";
const ribbon = 400; // points of a lane's trail
const lanes = [
  { hue: [213, 94, 0], arm: 1, prop: -3 },
  { hue: [0, 114, 178], arm: -1, prop: 3 },
];

// place returns hand and head of a lane at a time in seconds, in pixels about
// the middle of a page of that size.
function place(lane, t, w, h) {
  const r = Math.min(w, h) / 4.4, turn = Math.PI * t;
  const x = w / 2 + r * Math.cos(lane.arm * turn), y = h / 2 - r * Math.sin(lane.arm * turn);
  return { x, y, X: x + r * Math.cos(lane.prop * turn), Y: y - r * Math.sin(lane.prop * turn) };
}

// age returns the opacity of a point of a trail, k of ribbon, the newest last.
function age(k) {
  const young = k / ribbon;
  return 0.95 * (0.12 + 0.88 * young * young);
}

// when returns the time of a point of a trail that ends at t: one round back.
function when(t, k) { return t - 2 * (1 - k / ribbon); }
