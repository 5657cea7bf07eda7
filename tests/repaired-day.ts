/** A day whose base was told a height 54.917 m too low, so that every point of it is repaired, for tests of what is written. */
export const REPAIRED_DAY = `job "Breakwater"
  date        2026-05-19
  clock       UTC+01:00
  grid        EPSG:32629
  tolerance   35 mm + 1 ppm horizontal, 50 mm + 1 ppm vertical
mark A
  position    531547.000 m E, 4555805.000 m N
  height      61.201 m ellipsoidal
  uncertainty 8 mm horizontal, 12 mm vertical
antenna A1
  fixed-height 1.800 m
rover R1
  site-calibration none
setup BASE on A with A1 at 07:50 until 15:40
  keyed       position 531547.000 m E, 4555805.000 m N, height 6.284 m ellipsoidal
  keyed       antenna-height 1.800 m to arp
`;
