// The screens of the page: every one is tested for access and pictured; `at` is what is brought into view for that.
export const screens = [
  { name: "bench", place: "" },
  {
    name: "bench-wrench",
    place: "#/?tube=5/8&measuredCone=18.9&adapterLength=40 mm&wrenchLength=280 mm&wrenchRange=20-100 N·m",
    at: 'input[name="wrenchRange"]',
  },
  { name: "bench-mistaken", place: "#/?tube=5/8&measuredCone=wide&plateTorque=140 psi&adapterLength=-4 mm", at: '[data-problem-of="measuredCone"]' },
  { name: "tubes", place: "#/tubes" },
  { name: "convert", place: "#/convert?text=140 psi" },
  { name: "convert-mistaken", place: "#/convert?text=140 parsec" },
  { name: "settings", place: "#/settings" },
];
