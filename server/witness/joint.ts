/** From which interval on two observables must agree. */

/** At ten seconds and more the ionosphere and the clocks of satellites wander. */
export const JOINT_FROM = 10;
