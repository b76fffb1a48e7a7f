// The views that ask about fluids, a file of their own in the built page: see fetched.tsx.

import "../fetched-resources";

export { Convert } from "./convert";
export { MoistAir } from "./moist-air";
export { Saturation } from "./saturation";
export { Water } from "./water";
