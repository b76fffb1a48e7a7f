// The cards of the job's calculations, a file of their own in the built page: see fetched.tsx.

import "../fetched-resources";

export { Insulation } from "./insulation";
export { LineSet } from "./line-set";
export { PipeFriction } from "./pipe-friction";
export { PumpDown } from "./pump-down";
export { Charge } from "./charge";
export { RoomLimit } from "./room-limit";
export { Running } from "./running";
export { VacuumHold } from "./vacuum-hold";
export { StandingTest } from "./standing-test";
