/** What each code means, why it hurts and what to do: the first paragraphs of its page; written by `npm run bless`. */

export interface Explanation {
  readonly means: string;
  readonly hurts: string;
  readonly remedy: string;
}

export const EXPLANATIONS: Readonly<Record<string, Explanation>> = {
  'angle/packed': {
    means:
      'Degrees, minutes and seconds run into one another, or decimal degrees lack their sign: `41-09-08.18N`, `410908.18N`, `41.090818 N`.',
    hurts:
      '`41.090818 N` is 41.090818° to one program and 41°09\'08.18" to another, nearly seven kilometres apart. A packed angle counts as missing, even where only one reading seems plausible.',
    remedy:
      'Write the marks of degrees, minutes and seconds, or the degree sign behind decimal degrees. Each plausible reading is a fix; with a sign before it, the angle is offered in both hemispheres.',
  },
  'angle/range': {
    means: 'An angle has sixty minutes or seconds or more, or lies beyond the pole or the date line.',
    hurts:
      'No instrument shows such an angle, so at least one digit is wrong: one minute of latitude is 1.85 km. The position counts as missing.',
    remedy:
      'Read the angle again from its source. Two digits may be swapped, or decimals of a degree may have been read as minutes.',
  },
  'angle/sign': {
    means: 'An angle has a sign, beside its hemisphere or in its place.',
    hurts:
      '`-8°37\'26.27"W` may be meant as west, with the sign saying so a second time, or as minus west, which is east. A sign alone says neither whether the angle is a latitude or a longitude nor whose convention it follows. The readings lie on opposite sides of the earth, so the position counts as missing.',
    remedy: 'Leave the sign out; the letter alone says the hemisphere. The fixes offer the readings.',
  },
  'antenna/calibration': {
    means:
      "The antenna calibration that the notes name cannot be used: the file cannot be read, the antenna's type is not in it, or absolute and relative calibrations meet in one session.",
    hurts:
      'Without the calibration the height of the phase centre is unknown, and a receiver that was told a height to the phase centre cannot be checked. Mixing absolute and relative calibrations shifts heights by centimetres.',
    remedy:
      'Name the calibration file as it lies beside the session, and the type as the file writes it: 20 characters, name and radome. Where nearly the same type is in the file, the fixes offer it.',
  },
  'antenna/clearance': {
    means: 'A whip aerial under the receiver has less room than a quarter of its wave is long.',
    hurts: 'It bends, or stands against the tribrach and the head of the tripod; the base is heard less far.',
    remedy:
      'Put an extension between tribrach and antenna, and take it into the antenna height: the ARP rises with it. A base that needs an extension for its whip is the usual reason for an extension left out of the height.',
  },
  'antenna/type': {
    means: 'The receiver was told another antenna than the one that stood there, or none.',
    hurts:
      'The rover takes the phase centre of the antenna that it was told of. Every height is off by the difference of the two, and by the whole phase centre where none was told.',
    remedy:
      'Key the right type, note when, and shift the heights that were measured before. The fix adds the line with an open value where none was noted.',
  },
  'capture/antenna-differs': {
    means:
      'A recording of the corrections shows that the base broadcast another antenna type than the notes name, or none.',
    hurts:
      'Rovers take the calibration of the antenna that is broadcast. With the wrong one, heights are off by what the two phase centres differ.',
    remedy:
      'Look up which antenna stood there and what the receiver was told. Types are compared as calibration files write them: 20 characters, name and radome.',
  },
  'capture/differs': {
    means:
      'A recording of the corrections (`captured "base.rtcm3"`) shows another base position than the one that the keyed values in the notes make.',
    hurts:
      'The rovers used what was broadcast, whatever the notes say. Where the broadcast position is wrong, every point is off by as much; where only the note is wrong, a repair by the note would spoil good points.',
    remedy:
      'Look up in the receiver what it was told, and note it as a later `keyed` line; what is noted already stays. The recording wins: what a check shows is explained by it, and points are repaired by it.',
  },
  'capture/several-bases': {
    means:
      'A recording of the corrections holds more than one base: another station beside this one, or two bases that share a number and broadcast in turn.',
    hurts:
      'A rover that takes the corrections of another base is right about that base, and wrong about this one. Where two share a number it jumps between them, and nobody sees why.',
    remedy:
      'Find out whose the other base is. Give each base on a channel a number of its own, set the rover to it, and keep apart what was measured from which.',
  },
  'capture/stream-differs': {
    means:
      'A recording of the corrections holds other messages, or other rates, than the notes say were sent.',
    hurts:
      'What the radio carries, and how old corrections get, is computed from the notes. A constellation that was never sent explains a rover that was slow to fix.',
    remedy: 'Set the receiver to what was meant, or note what was sent.',
  },
  'capture/unusable': {
    means:
      'A recording of the corrections cannot be read, holds no station position, is damaged, or was by its weekday not made on the day of the notes.',
    hurts: 'It was made to show what the base really broadcast, and does not.',
    remedy:
      'Name the file as it lies beside the session. Record for longer than the interval of the station position, half a minute mostly. Where other files are not read (in a browser, or where a folder is not trusted), nothing can be compared; look again on the desktop.',
  },
  'check/after-event': {
    means:
      'Something happened to the base, and no check was made after it, or the two around it differ by more than chance.',
    hurts:
      'Nothing says whether the base stood as before. What was measured after the event is not bracketed, however well the day began.',
    remedy:
      'Occupy a known mark, or a nail by the base that was observed before, after anything that may have disturbed the tripod. Where two checks of one mark differ across the event, look at both readings first: the base may have moved, the nail may have been hit, or a digit may be wrong.',
  },
  'check/base-mark': {
    means: 'A check was made on the mark that the base itself stands on.',
    hurts:
      'Wrong coordinates of that mark show at both ends alike and cancel: the check agrees, whatever was keyed wrong in the register’s number.',
    remedy: 'Make the check on another known mark.',
  },
  'check/drift': {
    means:
      'Checks pass, and the coordinates moved between them by more than two occupations of one mark differ.',
    hurts:
      'The mark’s own uncertainty, which the tolerance allows for, plays no part between two occupations of it. The base has moved, though not yet far enough to fail.',
    remedy: 'Look at tripod, legs and plummet.',
  },
  'check/fails': {
    means:
      'A check is farther from the mark than the job tolerates, and than chance explains; without a tolerance, far beyond what chance does.',
    hurts:
      'The base, the rover or one of the marks is not what the notes say, and so is every point since the last check that agreed.',
    remedy:
      'Find the cause before measuring on. Where a known slip would explain all the checks of the setup, the finding says which; where several would, it says which observation tells them apart.',
  },
  'check/marginal': {
    means:
      'A check is beyond the job’s tolerance, by no more than chance does somewhere in a day of so many tests.',
    hurts:
      'It neither proves the day nor condemns it. A tolerance as tight as the gear alone makes such checks now and then.',
    remedy: 'Occupy the mark once more. If it is off again to the same side, something is wrong.',
  },
  'check/missing-closing': {
    means: 'No check on a known mark was made in the last hour of a setup.',
    hurts:
      'A tripod that was knocked in the afternoon does not show: what was measured after the last check is not closed.',
    remedy: 'Occupy a known mark before taking the base down. Nothing is said while the setup is open.',
  },
  'check/missing-opening': {
    means: 'No check on a second known mark was made in the first hour of a setup.',
    hurts:
      'A slip in what was keyed shows at the first check. Without one it shows weeks later, to somebody else.',
    remedy:
      'Occupy a second known mark before the first point. Nothing is said while the setup is open. The fix adds an empty check for one that was made and not written down.',
  },
  'check/no-time': {
    means: 'A check has no time.',
    hurts:
      'A check proves what was measured before it and after it. Without a time nobody can say which points those are, so one that agrees proves none of them, and one that fails puts all of them in doubt.',
    remedy:
      'Look the time up in the controller, and write it behind the mark: `check OPEN on PM-09 at 08:25`. The order of the notes is no time.',
  },
  'check/surprising': {
    means:
      'A check passes, and is farther off than a right check with this gear and these marks stays within.',
    hurts:
      'By chance that happens once in so many checks as the job’s confidence says: once in twenty at 95 %. Twice in a row something is wrong.',
    remedy: 'Nothing yet. Look at the next check, and at tripod and pole.',
  },
  'check/tolerance-too-tight': {
    means:
      'The job’s tolerance is tighter than what right checks stay within, from the uncertainty of marks, centring, antenna height and receivers.',
    hurts: 'Right checks will fail it now and then, and people learn to look away.',
    remedy: 'Widen the tolerance, or use better marks, shorter vectors and longer observations.',
  },
  'check/two-bases': {
    means: 'A check was made while two bases stood, and does not say from which.',
    hurts:
      'It proves the base that it was made from, and says nothing of the other. Given to the wrong one it would clear a base that nobody has checked.',
    remedy: 'Write which base the rover listened to: `from BASE`. Until then the check proves neither.',
  },
  'check/weak': {
    means:
      'A check was observed too poorly: the solution was not fixed, or it had few epochs, few satellites or poor geometry. The job’s `limits` decide, else usual ones.',
    hurts: 'A float solution is good to some decimetres, and a fix over few epochs may be wrong altogether.',
    remedy: 'Wait for a fixed solution, and observe again.',
  },
  'event/no-time': {
    means: 'An event has no time.',
    hurts:
      'It may have come between any two checks. So no part of the day is bracketed, although checks agree on both sides of it.',
    remedy:
      'Find out when it was, and write it behind the word: `event disturbance at 11:10`. The order of the notes is no time.',
  },
  'gear/out-of-date': {
    means:
      'The plummet or the bubble of a setup was last adjusted more than a year before the day, or after it.',
    hurts:
      'A plummet out of adjustment centres the antenna beside the mark, and a bubble tilts it there. Every point is off by the same amount, every check too, and no check from this base shows it.',
    remedy:
      'Prove the tribrach: centre it, turn it half way round, and see whether plummet and bubble stay. Note the day on which it was last adjusted: `plummet ± 1 mm, adjusted 2026-03-02`. Once a year is common practice; your own rules may ask for more. Where no day is noted, nothing is said.',
  },
  'height/antenna-not-keyed': {
    means: 'The setup is over, and the notes do not say which antenna height the receiver was told.',
    hurts:
      'An extension left out, a wrong unit or two swapped digits stay unseen, and every height of the day rests on that number.',
    remedy:
      'Look it up on the receiver or in its log, and note it. The fix adds the line with an open value.',
  },
  'height/coarse-model': {
    means:
      'The height to key rests on the built-in coarse model, because the mark has no separation and the job names EGM96.',
    hurts:
      'That model is good to about a metre. All heights of the day share its error, and checks on marks nearby do not show it.',
    remedy: 'Use the separation that the register publishes, or name a regional geoid grid for the job.',
  },
  'height/extension': {
    means:
      'The antenna height that was keyed leaves the extension out, counts it twice, or has it added before the slope was taken off.',
    hurts:
      'Every height of the day is off by the length of the extension, and nothing else in the notes looks wrong.',
    remedy:
      'Key the right number, note when (`keyed … at 09:05`), and shift the points that were measured before. What was keyed is a fact of the day and stays in the notes. The fix adds a line with open values for what was keyed later, if anything was.',
  },
  'height/geoid-unreadable': {
    means:
      'The job names a geoid model that cannot be used: the grid file is not there, cannot be read, or does not reach the site.',
    hurts:
      'Published separations are used as they are, and nothing compares them with the model; a mark without one has no ellipsoidal height, so that there is nothing to key.',
    remedy:
      'Put the grid where the job says it is, or name another one. The built-in EGM96 catches blunders, and is too coarse for more.',
  },
  'height/impossible': {
    means:
      'A length is one that no such thing can have: a taped height, an extension, a phase centre, a point to tape to, the height or the separation of a mark.',
    hurts:
      'Most often the unit is wrong: 1.413 mm for 1.413 m. What rests on it is wrong by as much, so the key card leaves it out.',
    remedy:
      'Read it again. The fixes offer the units in which the number is possible; only the person who read it knows. Possible are 10 mm to 20 m on a tape, 5 mm to 10 m for extensions, 1 m for a phase centre, heights from 500 m below the sea to 9000 m, separations from −120 m to 100 m (common practice).',
  },
  'height/model-unnamed': {
    means:
      'An orthometric height, or one above a local surface, was keyed, and the notes do not say by which geoid model the receiver makes it ellipsoidal.',
    hurts:
      'Which height the base sent depends on a model that is in the receiver and nowhere in the notes. Nothing can be compared.',
    remedy:
      'Name the model behind the height (`height 6.284 m orthometric geoid "grids/region.gtx"`). If the receiver took the number for an ellipsoidal height, write `ellipsoidal`: that is what it was told.',
  },
  'height/no-separation': {
    means:
      'The mark under the base has a height above sea level, and nothing says how far the geoid lies above the ellipsoid there.',
    hurts:
      'A receiver wants the ellipsoidal height, which lies tens of metres from the other one in most places. It cannot be worked out, so what was keyed is compared with nothing, and the commonest slip of all stays unseen until a check on a known mark. Only where the keyed number is the height above sea level to the millimetre is it named all the same, by the built-in coarse model.',
    remedy:
      'Add the separation that the register publishes for the mark, or name a regional geoid grid for the job.',
  },
  'height/no-surface': {
    means: 'A height does not say which surface it stands on.',
    hurts:
      'The geoid and the ellipsoid lie tens of metres apart in most places. A height read against the wrong one shifts every point of the day by that much, all alike, so that nothing looks odd. Without its surface the height is not used.',
    remedy:
      'Write `orthometric` (above the levelling datum), `ellipsoidal`, or `above` and the name of a local surface. The register or the screen that the height was read from says which.',
  },
  'height/not-keyed': {
    means: 'The setup is over, and the notes do not say which height the receiver was told.',
    hurts:
      'Nothing can be compared, so that the slip that is made most often, a height on the wrong surface, stays unseen.',
    remedy:
      'Look the height up on the receiver or in its log, and note it. The fix adds the line with an open value.',
  },
  'height/not-retaped': {
    means: 'The tripod was levelled anew, and nobody taped it since.',
    hurts:
      'The legs were moved, so the old height is wrong by millimetres to decimetres, and every point after it with it.',
    remedy: 'Tape it, note the time, and key the new height.',
  },
  'height/phase-centre': {
    means:
      'The antenna height that was keyed leads to the phase centre where the receiver takes it to the reference point, or the other way round.',
    hurts: 'The two lie 50 to 150 mm apart. Horizontally nothing shows; every height is off by as much.',
    remedy:
      'Look up to which point the receiver takes the antenna height, and write it (`to arp`, `to phase-centre`). Key the right number, note when (`keyed … at 09:05`), and shift the points that were measured before. What was keyed is a fact of the day and stays in the notes. The fix adds a line with open values for what was keyed later, if anything was.',
  },
  'height/readings-disagree': {
    means: 'Two readings of the tape at one time differ by more than readings of a tape do.',
    hurts:
      'One of them is wrong, and the mean of the two is wrong by half as much. The antenna height of the whole day rests on it.',
    remedy: 'Tape again. Where the tripod is gone, say which reading counts and why.',
  },
  'height/separation-sign': {
    means:
      'A separation has the wrong sign: in the mark’s published values, or in the height that was keyed. A job that names no model is compared with the built-in one.',
    hurts:
      'The ellipsoidal height is then off by twice the separation, some tens of metres to more than a hundred.',
    remedy:
      'Above an ellipsoid that lies below the geoid the separation is positive, and h = H + N. Look it up in the register again. For a keyed number: key the right one, note when, and shift the points that were measured before.',
  },
  'height/separation': {
    means:
      'The published separation of the mark under the base is not what the job’s geoid model has there, by more than both are uncertain. Where the job names no model, the built-in one still finds what is more than 5 m off.',
    hurts:
      'The base is told a height that rests on the published separation, and the controller takes the model’s off again: every orthometric height comes out shifted by the difference, in all the day, and checks on marks of the same register show it.',
    remedy:
      'Decide what the job wants. Tied to the register’s heights: keep the published value and shift the controller’s heights. In the model’s own surface: use the model at the base, too. A difference of metres, or one that the coarse built-in model shows, is a wrong number: look it up again.',
  },
  'height/settled': {
    means: 'The tape gives another antenna height at the end than at the beginning.',
    hurts:
      'The tripod has settled or was moved while the base went on with the height that it was told. Points measured in between are off by up to as much.',
    remedy:
      'Look at the checks: they say when it moved. If the tripod was set anew, note it (`event re-level at 11:40`), and what was keyed then.',
  },
  'height/slope': {
    means:
      'In the antenna height that was keyed the slope of the tape was not taken off, or taken off where the tape hung straight down, or the way from the taped point down to the reference point was forgotten.',
    hurts:
      'A slant read to the rim of an antenna is some millimetres to centimetres too long, and the rim lies some centimetres above the reference point. Every height of the day is off by as much.',
    remedy:
      'Key the right number, note when (`keyed … at 09:05`), and shift the points that were measured before. What was keyed is a fact of the day and stays in the notes. The fix adds a line with open values for what was keyed later, if anything was.',
  },
  'height/tape-too-short': {
    means: 'A tape held off the plumb line is not longer than its distance from it.',
    hurts:
      'A slope is always longer than what it stands off, so no height comes out of this reading. Where it is the only one, the keyed antenna height is compared with nothing, and a slip in it stays unseen.',
    remedy:
      'Look at the unit and the digits of both numbers in the notes; most often metres were read and millimetres written, or the two stand in each other’s place. Where the notes do not say, tape again.',
  },
  'height/wrong-surface': {
    means:
      'The height that was keyed is the right one on another surface than the receiver takes it for: the orthometric height, one above chart datum, or one with the separation in it twice.',
    hurts:
      'A receiver that wants a height above the ellipsoid takes a height above sea level without a word. Every height of the day is then off by the separation, tens of metres in most of the world, and in some places so little that nobody notices.',
    remedy:
      'Key the right number, note when (`keyed … at 09:05`), and shift the points that were measured before. What was keyed is a fact of the day and stays in the notes. The fix adds a line with open values for what was keyed later, if anything was.',
  },
  'mark/no-source': {
    means: 'Coordinates that the day rests on do not say where they were published.',
    hurts:
      "A reviewer cannot look them up again, and nobody can tell whether they were taken from the register, from a colleague's file, or from an earlier day whose base was wrong.",
    remedy:
      'Add the register and the day on which it was looked up. The fix adds the line with an open value; what the source was, only you know.',
  },
  'mark/no-uncertainty': {
    means: 'A mark is used in a check, and nothing says how good its coordinates are.',
    hurts:
      'How far a right check may be off follows from the uncertainties of both marks, the centring and the receivers. Without one of them there is no such level, and a residual of 30 mm may be noise or a blunder.',
    remedy:
      'Add what the register says, as standard uncertainties, or with the probability that the register states (`20 mm horizontal 95 %`). Nothing is assumed for a mark.',
  },
  'mark/not-intact': {
    means: 'A mark that the day rests on was found damaged, disturbed, destroyed, or was not found.',
    hurts:
      'A mark that was hit or moved is no longer where its coordinates say. A base on it shifts every point; a check on it raises a false alarm, or hides a true one.',
    remedy:
      'Use another mark. If there is none, prove this one against two others before anything rests on it. `found` knows `intact`, `damaged`, `disturbed`, `destroyed` and `not-found`.',
  },
  'mark/unknown': {
    means: 'A setup stands on a mark, or a check was made on one, that the session does not know.',
    hurts:
      'Without the mark there are no coordinates to key in and none to compare with: the day has no base, or the check proves nothing.',
    remedy:
      'Correct the name, add the mark with its published coordinates, or bring it in with `use`. Names that differ in a letter, in the case, or in O and 0 are offered as fixes.',
  },
  'number/decimal-comma': {
    means: 'A comma stands between digits.',
    hurts:
      '`1,284` is 1.284 in one country and 1284 in another, and it may be two numbers in a list. The readings lie far apart, so the number counts as missing.',
    remedy:
      'Write a decimal point. A comma that parts two values has a blank behind it. The fixes offer each reading; only the writer knows which was meant.',
  },
  'number/digits-swapped': {
    means: 'Two neighbouring digits of a keyed number changed places.',
    hurts:
      'It happens to everybody who copies numbers, and a number with swapped digits looks as good as the right one. The error may be millimetres or kilometres.',
    remedy:
      'Compare the number with the receiver, digit by digit. Key the right number, note when (`keyed … at 09:05`), and shift the points that were measured before. What was keyed is a fact of the day and stays in the notes. The fix adds a line with open values for what was keyed later, if anything was.',
  },
  'points/in-doubt': {
    means: 'A check failed, and these points were measured between it and the nearest check that passed.',
    hurts:
      'Somewhere between the two checks something went wrong, and every point that was measured after that carries the same error. Nothing in the points themselves shows it.',
    remedy:
      'Find out why the check failed. What follows from a wrongly keyed value can be taken off the points (`tribrach points`); what nobody can explain has to be measured again. Until then use none of these points.',
  },
  'points/state-unknown': {
    means: 'Whether points are as the base broadcast them, or have already been corrected, is not said.',
    hurts:
      'When it turns out that the base was told something wrong, its error has to come off the points, once. Points that somebody has already put right would be made wrong again. So nothing is taken off points whose state is not known.',
    remedy:
      'Write `state as-broadcast` for points as the controller exported them, or `state corrected` for points that have been put right.',
  },
  'points/unfit': {
    means:
      'Points of a set are not what they would be taken for: observed too weakly, too far from their base, or several places of one name.',
    hurts:
      'The checks prove the base and never a single point. A float point of three epochs between two good checks is still a float point, and with east and north exchanged it lies in another country.',
    remedy:
      'Measure weak points again, with the limits of the job (`limits`) in mind. Compare the columns and the base with the controller where points lie far off. Give each place a name of its own. Columns `solution`, `epochs`, `pdop`, `satellites` and `spread m` say how well each row was observed.',
  },
  'points/unreadable': {
    means: 'A points file, its columns, or a row of it cannot be read.',
    hurts:
      'A coordinate that cannot be read is left out, never guessed: its point is not judged and not repaired. A column whose unit is not said could be metres or feet, so nothing is read from it.',
    remedy:
      'Put right what is told, in the file at the line that is named, or in the line `columns`. Decimal commas are declared with `decimal comma`, other separators with `separator semicolon`.',
  },
  'position/autonomous-differs': {
    means:
      'Where the receiver finds itself alone is more than 15 m to the side of what was keyed, or more than 25 m above or below it; before anything is keyed, of where its mark is said to be.',
    hurts:
      'A receiver alone is good to some metres. The tripod stands over another mark than noted, or what was keyed is wrong: another mark, hemisphere, zone or datum. It is the first check of the day, and it is free.',
    remedy: 'Read the name on the mark, then compare what was keyed digit by digit.',
  },
  'position/datum-unknown': {
    means:
      'In which datum the receiver is to be told coordinates is not known: the grid is one of an old network, or no transformation leads from it to the datum that the job names. Or a mark that is used stands in a datum, or at an epoch, from which no known way leads to that of the job.',
    hurts: 'Coordinates of an old network lie up to hundreds of metres from those that a receiver works in.',
    remedy:
      'Name the datum of the keyed values, and the published transformation that leads there with its accuracy.',
  },
  'position/grid-unknown': {
    means:
      'Coordinates stand in a grid that is not known: the job names none, or a code that is not in the register, or a grid whose projection is not computed here.',
    hurts: 'Without its grid a coordinate is no place. Nothing is worked out from it.',
    remedy: 'Name the grid by its EPSG code. Codes and names can be searched for while you type.',
  },
  'position/ground-scale': {
    means: "The distances of a site's own ground grid are not those on the ground.",
    hurts:
      'Ground and grid distances are mixed in silence: what is set out by tape and by coordinates disagrees, by millimetres in every hundred metres. A scale that is turned over doubles what it should take away.',
    remedy:
      'Give the combined scale factor of the site, grid distance over ground distance: the point scale factor times the elevation factor.',
  },
  'position/keyed-differs': {
    means:
      'A number that was keyed is not the right one. Where a slip gives the very number, the finding names it: another mark, another datum or zone, what was keyed the day before.',
    hurts: 'Everything that the rover measures is off by the same vector, and nothing at the rover shows it.',
    remedy:
      'Key the right number, note when (`keyed … at 09:05`), and shift the points that were measured before. What was keyed is a fact of the day and stays in the notes. The fix adds a line with open values for what was keyed later, if anything was. A receiver that is told a rounded number sends that: where only the note is rounded, write what was keyed in full.',
  },
  'position/not-keyed': {
    means: 'The setup is over, and the notes do not say which position the receiver was told.',
    hurts: 'Nothing can be compared, and whoever finds the day shifted later cannot say by how much.',
    remedy: 'Look it up on the receiver or in its log, and note it. The fix adds the line with open values.',
  },
  'position/out-of-area': {
    means:
      'Coordinates lie outside the area that their grid is for, or where its projection takes none at all: of a mark, of a point, as they were keyed or observed. What can be compared with its mark is told by how far it is off instead. Or a transformation is named (`by`) whose own area excludes the place; one that is chosen here never does.',
    hurts:
      'The grid is another one, or a coordinate is wrong. Formulas of a projection give numbers far outside their area, too, and those numbers look right.',
    remedy:
      'Look at the register: the grid, its zone, and the coordinate. Where all marks lie outside, the finding stands at the grid.',
  },
  'position/swapped': {
    means:
      'East and north, or latitude and longitude, stand in each other’s place: in a mark’s coordinates, in what was keyed, or in what was observed where the grid cannot take it so.',
    hurts:
      'The mark, or the base, then lies hundreds of kilometres away, or, where the two numbers are alike, so near that nobody sees it.',
    remedy:
      'Look at the register and see which of its columns is which. For a keyed number: key the right one, note when, and shift the points that were measured before.',
  },
  'position/transformation-accuracy': {
    means:
      "A keyed number, or a check, differs from the mark by no more than the transformation between the job's grid and the datum of the keyed values is good to: the half-width or the radius at the job's confidence that follows from its published accuracy.",
    hurts:
      "A slip of that size cannot be told from the transformation's own error. Whoever keyed the position may have had it by a better transformation. So nothing is made of the difference, and nothing is taken off the points; what they are good to counts the transformation in.",
    remedy:
      'Prove the base by checks on a second mark in the grid: the transformation cancels between marks and checks in one grid. Or name a better transformation, where one is published for the area (`datum … by …`).',
  },
  'program/fault': {
    means:
      'The program itself failed over a part of this session. No session is known that brings it about: it is a mistake in Tribrach and not in the notes.',
    hurts:
      'What rests on that part is neither computed nor judged, so the day must not be taken for proved. Everything else is answered as usual.',
    remedy:
      'Keep the file as it is, and report the sentence with the lines that it stands at. Until it is mended, work out by hand what rests on that part; often a figure nearby is far from anything that can be measured.',
  },
  'radio/ends-differ': {
    means:
      'A setting that must be the same at both ends of the radio link is noted differently for base and rover, or for one of them only.',
    hurts:
      'With another carrier, channel, air rate, spreading factor, bandwidth or coding rate the rover hears nothing, and stays without corrections. Where it heard something all the same, one of the notes is wrong.',
    remedy:
      'Look into both radios and note what is set. Numbers are compared as numbers: 461.0375 MHz and 461037.5 kHz are the same.',
  },
  'radio/overload': {
    means:
      'The stream asks more of the radio than it carries, on average or in its fullest second, or leaves less than a fifth of it free.',
    hurts:
      'Corrections that are due before the last ones are through come later and later, or are left out; fixing takes longer, and points hang on old corrections. A fullest second that takes longer than a second makes everything in it late, although the average is well below the whole.',
    remedy:
      'Let the messages take turns first: where one constellation is sent on odd and the next on even seconds, nothing is lost. Note the turn as `message 1087 every 2 s after 1 s`. Then send all but the first constellation less often, send smaller messages (MSM4 for MSM7), or set a faster air rate at both ends, which reaches less far. The fix is offered as long as the setup is a plan. Once anything was measured or keyed, what was sent is a fact of the day, and only advice is given.',
  },
  'radio/range': {
    means:
      "By its power, aerials and settings the base's radio does not reach the farthest check of the day, or barely does.",
    hurts: 'Out there corrections fail now and then, and the rover floats or hangs on old ones.',
    remedy:
      'Raise the aerials first: over level ground doubling the height of one wins 6 dB. Then set the base nearer, or a slower air rate at both ends, as far as the corrections still fit. More power wins little, and is not yours to choose: check the licence conditions in force where you are.',
  },
  'radio/settings': {
    means:
      'A setting of a radio that there is not, or settings that do not go together: a spreading factor or coding rate that no radio has, an air rate that is not the one which spreading, bandwidth and coding make, or one that is faster than the channel usually carries.',
    hurts:
      'What the radio carries, and how far, follows from these settings. A wrong note makes every figure about the link wrong.',
    remedy:
      'Look the setting up in the radio. The usual largest rate of a channel is common practice (9.6 kbps in 12.5 kHz, 19.2 kbps in 25 kHz), not a limit of nature: where a check was fixed over the radio, a faster one is mentioned and no more. A setting that there is not, or that the others contradict, stays a warning until the note is put right, whatever else the day shows.',
  },
  'raw-log/differs': {
    means:
      'The header of the raw observation file (`raw-log "base.26o"`, RINEX) says another antenna height, antenna type or place than the notes.',
    hurts:
      'Whoever processes the raw file takes its header for true: a height left out of it comes out as a base that much too high or too low, and with it every vector.',
    remedy:
      "Put the header right, or the note. A height of 0 in the header mostly means that nobody put one in. Files that are not there, or are in a receiver's own format, are not compared.",
  },
  'raw-log/position': {
    means:
      'The raw observations of the base (`raw-log` with `ephemerides`) place its antenna somewhere else than the notes do.',
    hurts:
      'The satellites know nothing of the notes: a base over another mark, in another zone, with swapped figures or with a sea-level height for an ellipsoidal one shifts every point by all of it.',
    remedy:
      'Look which mark the base stood on, and at its coordinates and height. Pseudoranges are good to some 3 m (95 %), whatever the length of the session, so that more than 5 m is an error and a little less a reason to check on a second mark. The frame of the orbits is shifted to the keyed datum by date. Less than 3 m proves the gross part of the setup and nothing finer: no antenna height and no centring.',
  },
  'raw-log/step': {
    means:
      'The raw observations of the base show a sudden movement of its antenna, and the notes have no event within five minutes of it.',
    hurts:
      'Every point measured after it is off by as much, and no note says so. The day is parted there as by a disturbance: points count as bracketed only with a check on each side of it that agrees.',
    remedy:
      'Note what happened, then check on another mark. A movement is told where the change of carrier phase between two epochs cannot be chance: once in thirty days of eight hours a standing antenna is taken for a moved one. A step before the base was set up tells nothing. Slow sinking, and anything inside a gap, is not seen this way.',
  },
  'recording/doubtful': {
    means: 'An antenna log was not fixed throughout, hung on old corrections, or has damaged lines.',
    hurts:
      'The mean of what was fixed stands, but a rover that falls out of the fix beside a mark was at its limit: an obstruction, a weak link, too few satellites. Where nothing was fixed, the position is good to decimetres at best.',
    remedy:
      'Observe again, longer, after the rover has fixed anew. Look at the age of the corrections, and at the link.',
  },
  'recording/unusable': {
    means:
      'An antenna log (`observed from "rover.nmea" between 08:25 and 08:28`) gives no position for its check, or none that can be brought to the ground: the file cannot be read, has nothing in the time asked for, carries no altitude, or no pole is noted.',
    hurts: 'The check proves nothing.',
    remedy:
      "Name the file as it lies beside the session, and the time by the job's clock. Note the pole with the rover or the check: the log knows the antenna, the pole stands between it and the mark.",
  },
  'review/stale': {
    means:
      'A `review` line carries a seal, and the session, or a file that it draws on, is no longer what was sealed.',
    hurts:
      'Somebody put their name to numbers that have changed since. Whoever relies on the review relies on a version that no longer exists.',
    remedy:
      "Look at what moved (`tribrach compare OLD NEW`, or `git diff` with the comparison set up), and have the session reviewed again: `tribrach seal SESSION` prints the new line for the reviewer to place. No fix writes a review. A seal shows that something changed; it proves nobody's identity. Sign the commit with git for that.",
  },
  'site/no-hazards': {
    means: 'The session has a setup and no word on what could hurt somebody at the site.',
    hurts:
      'Tripods stand where machines drive, over water, beside traffic. What was seen and done about it belongs to the record of the day as much as the heights do.',
    remedy:
      'Add a `hazard` with what was done about it. This is a reminder: it is said once and judges nothing. Local rules and the person in charge of the site decide what is needed.',
  },
  'stream/contradictory': {
    means:
      'One constellation is sent twice, in two forms (1004 and 1077, say, or 1074 and 1077), or a message is listed twice.',
    hurts:
      'The same observations take their time on the air twice, and which of the two a rover uses is its own affair: two rovers of one day may differ.',
    remedy: 'Leave out one of the two: the older one where every rover reads the newer.',
  },
  'stream/missing-message': {
    means:
      "A message is missing that a rover needs beside the others: the biases of GLONASS (1230), the description of the base's antenna (1007, 1008 or 1033), or the observations themselves.",
    hurts:
      "GLONASS satellites have a frequency each, and every make of receiver delays them in its own way: without the biases a rover of another make cannot fix them, or fixes them wrongly. Without the antenna's description heights are off by what the phase centre of one antenna differs from another's.",
    remedy:
      'Send 1230 wherever GLONASS is sent, and 1033 in any case; each once in ten seconds is usual (common practice).',
  },
  'stream/no-base-position': {
    means: 'The stream carries no station position, message 1005 or 1006.',
    hurts:
      'A rover computes its own position from that of the base. Without it there is no result, or the rover holds on to the position of the day before.',
    remedy:
      'Send 1006, which carries the antenna height as well; one in ten seconds is usual (common practice). Where it was sent and only the note forgot it, add it.',
  },
  'stream/system-unknown': {
    means: 'A word under `tracked` is no constellation.',
    hurts:
      'How long a message is follows from how many satellites of its constellation are tracked. With a name that nobody knows the message has no size, and the load of the radio is told too low.',
    remedy:
      'Write one of GPS, GLONASS, Galileo, BeiDou, QZSS, SBAS, NavIC. The fixes offer what is nearly that.',
  },
  'syntax/bare-point': {
    means: 'A number starts or ends with its decimal point.',
    hurts:
      'A digit may have been lost there: `.5 m` may once have been `1.5 m`. The number counts as missing.',
    remedy: 'Write the digits on both sides of the point, or leave the point out.',
  },
  'syntax/bidirectional-control': {
    means: 'An invisible character changes the order in which the line is shown.',
    hurts:
      'What a reviewer sees is then not what is computed with: digits can be shown in another order than they stand in the file.',
    remedy: 'Take the character out, and read the line again from its source.',
  },
  'syntax/broken-number': {
    means: 'Digits and signs stand together that make no number, or one of hundreds of digits.',
    hurts: 'Any reading would be a guess, so the value counts as missing.',
    remedy: 'Write it again, from the source.',
  },
  'syntax/date-format': {
    means: 'A date is not written as year, month, day.',
    hurts:
      '`05/06/2026` is the fifth of June to one reader and the sixth of May to another. The date counts as missing.',
    remedy: 'Write the year first: `2026-06-05`. Each possible reading is a fix.',
  },
  'syntax/duplicate-name': {
    means: 'Two entries of one kind have the same name.',
    hurts:
      'Wherever the name is used, the first one counts; a value changed in the second changes nothing. A mark that two files bring in is one mark only where both say the same of it.',
    remedy: 'Give the second one a name of its own, or take it out.',
  },
  'syntax/exponent': {
    means: 'A number has an exponent, as spreadsheets print it: `1.64905E+05`.',
    hurts:
      'A program that prints numbers so has rounded them, and no reader can tell how many digits are gone. The number counts as missing.',
    remedy: 'Write it in full, from the source. The fix moves the point and invents no digit beyond that.',
  },
  'syntax/grouped-digits': {
    means: 'The digits of a number are set apart in groups: `164 904.902`, `1,234.5`.',
    hurts:
      'What parts the groups in one country is the decimal sign of another, and a blank may part two numbers. The number counts as missing.',
    remedy: 'Write the digits without gaps.',
  },
  'syntax/impossible-time': {
    means:
      'A time is one that no clock shows or is written in another style than that of 24 hours, or a day is one that no calendar has.',
    hurts: 'What happened then cannot be put in order with the rest of the day.',
    remedy:
      'Read it again from the notes. Midnight is 00:00 of the next day, with its date before it; twenty to five in the afternoon is 16:40, and ten to eight of UTC is 07:50Z.',
  },
  'syntax/indent': {
    means:
      'A detail stands in the first column, or an entry behind blanks. Mail and messages strip and add blanks.',
    hurts:
      'It is read as what it is all the same. A reader, though, sees a detail as an entry, or an entry as a detail of the one above.',
    remedy: 'Set details in, and put entries in the first column.',
  },
  'syntax/invisible-character': {
    means:
      'A character without width stands in the line; they come along when text is copied from a page or a message.',
    hurts:
      'It is ignored here. Two names that look the same and differ by such a character are different names elsewhere, and a search misses one of them.',
    remedy: 'Take it out.',
  },
  'syntax/leftover': {
    means: 'Something on a line could not be read as part of it.',
    hurts:
      'This part of the line is not read. What it was meant to say is missing: a date, a point on the antenna, a rover.',
    remedy:
      'Correct the word; near ones are offered as fixes. Text stands in double quotes; where that is all that is missing, the fix puts them round it. A remark of your own goes behind `#`.',
  },
  'syntax/letter-case': {
    means: 'A word of the language is written in other letters than it should be.',
    hurts:
      'It is read as what it is. A search for `height` misses `Height`, though, and in names and units the case does count.',
    remedy: 'Write it in small letters.',
  },
  'syntax/look-alike': {
    means: 'A dash or hyphen looks like the usual one and is another character.',
    hurts:
      'It is read as what it looks like. A search for the line misses it, and other programs may read the number without its minus.',
    remedy: 'Let the fix write the usual one.',
  },
  'syntax/misplaced-detail': {
    means: 'A detail stands below an entry that has no such detail.',
    hurts:
      'The line is not read, so what it says is missing where it belongs: a height that slipped below a radio is no height of the mark.',
    remedy: 'Move the line below the entry that it is about.',
  },
  'syntax/missing-letter': {
    means: 'A coordinate does not say which way it counts.',
    hurts:
      'East and north swapped, or a position in the wrong hemisphere, lie up to thousands of kilometres off. A coordinate without its letter counts as missing.',
    remedy:
      'Write `E` or `N` behind a length (`W` and `S` where the grid counts that way), and N, S, E or W behind an angle.',
  },
  'syntax/missing-value': {
    means: 'Something that must stand behind a word is missing.',
    hurts: 'What rests on it cannot be computed; it is never taken for zero.',
    remedy:
      'Write the value. Where it is not known yet, write `?`, so that a reader sees that it is still to come.',
  },
  'syntax/open-value': {
    means: 'A `?` stands where a value will be.',
    hurts:
      'While the setup is open, the day has simply not brought it yet, and this is no more than a hint. Once the setup has ended, what rests on the value cannot be derived, and the session cannot be sealed.',
    remedy: 'Fill it in from the notes of the day.',
  },
  'syntax/repeated': {
    means: 'A detail that can be said once stands twice in an entry, or a file has two jobs.',
    hurts:
      'Where the two differ, one of them is wrong, and nothing shows which. Neither is used, and the value counts as missing.',
    remedy:
      'Keep the one that is right. Readings of the tape, keyed values, messages, extensions and the like may stand as often as there are any.',
  },
  'syntax/unclosed-text': {
    means: 'A text is opened with a double quote and not closed on its line.',
    hurts:
      'Everything behind it on the line is taken for text: a date, a time, a name that stands there is not read, and neither is a comment.',
    remedy:
      'Close the text. A double quote inside a text is written twice; a text never goes on in the next line.',
  },
  'syntax/unknown-name': {
    means: 'A line names an antenna, a rover, a setup or a surface that the session does not have.',
    hurts:
      'What rests on it cannot be derived: without the antenna there are no tape points and no phase centre, without the setup there is no base.',
    remedy: 'Correct the name, add the entry, or bring it in with `use`. Near names are offered as fixes.',
  },
  'syntax/unknown-word': {
    means: 'A line begins with a word that is none of the language, or none at all.',
    hurts:
      'The line is not read. Where the word should have opened an entry, the lines below it are not read either.',
    remedy:
      'Correct the word; near ones are offered as fixes. A remark of your own starts with `#`; text that belongs to the record is a `note`.',
  },
  'syntax/unreadable-file': {
    means: 'Another session file that this one uses cannot be read.',
    hurts:
      'The marks, antennas, rovers and surfaces that it should bring are missing, and what rests on them cannot be derived.',
    remedy:
      'Correct the path: it is seen from the folder of this file, with `/` between folders. Files outside the project are not read unless you allow it.',
  },
  'syntax/used-file': {
    means:
      'Lines of a used file cannot be read as they are written, and the session needs what they would say.',
    hurts:
      'A height or a separation that cannot be read is missing here, and a wrongly keyed number is then compared with nothing. The file itself is seldom open, so that nobody sees what is wrong with it.',
    remedy:
      'Open the used file and mend the lines that are named; each is told there as well. Marks that this session does not use are left to the file itself.',
  },
  'syntax/value-range': {
    means: 'A word or a number stands where only some have a meaning, and it is none of them.',
    hurts: 'It is not used, so that what it was meant to say is missing.',
    remedy: 'Take one of those that the message lists.',
  },
  'syntax/wrong-dimension': {
    means: 'A quantity of another kind stands in a place: an angle for a length, a length for a time.',
    hurts:
      'The value counts as missing. Most often a detail was mixed up, or feet and inches were written with the marks of minutes and seconds.',
    remedy: 'Write the quantity that belongs here. Feet and inches are `ft` and `in`.',
  },
  'time/order': {
    means:
      'A time lies before another one that it must follow: a setup ends before it starts, a recording is read backwards, a review is older than its day. A setup that stands for more than two weeks most likely ends at a wrong date. A reading, keyed value, check or event noted below a later one is a hint.',
    hurts:
      'What was keyed when, which check closes which stretch, and whether a reading was taken before or after a disturbance all follow from the times. One wrong hour moves a check into another stretch.',
    remedy: 'Read the times again. Past midnight, write the date before the time: `until 2026-05-20 01:40`.',
  },
  'time/outside-setup': {
    means:
      'A reading, a keyed value, a check, a point, rows of points or an event are noted at a time when their base did not stand.',
    hurts:
      'No base stood then that a check could prove. Most often an hour is wrong, or the end of the setup was noted too early, and the stretch that the check should bracket stays open.',
    remedy:
      "Read the times again. Where two bases stood on one day, say which one is meant: `from BASE`. Rows that lie outside by just the hours between local time and UTC were told by a clock in UTC: write `time utc` in `columns`. No proof takes a point from outside its base's time.",
  },
  'unit/feet': {
    means:
      'A number in feet was keyed as metres, one in metres as feet, 5 ft 2 in as 5.2 ft, coordinates in one kind of feet as the other; or a reading agrees with the other one of its time as soon as it is read in feet.',
    hurts:
      'An antenna height is then off by a metre or more, and so is every height of the day. The two kinds of feet differ by two parts in a million: four feet in coordinates of two million.',
    remedy:
      'For a reading, the fix offers the unit in which it agrees; only the person who read the tape knows. For a keyed number: key the right one, note when, and shift the points that were measured before.',
  },
  'unit/missing': {
    means: 'A number stands where a length, an angle or another quantity belongs, and it has no unit.',
    hurts:
      '1284 may be millimetres, and 4.21 may be feet. A guess that is wrong shifts every point of the day, and nothing in the numbers shows it. So nothing is computed from a number without a unit.',
    remedy:
      'Write the unit that stood on the tape or on the screen. The fixes offer each unit that would fit; only the person who read the number knows which it was.',
  },
  'unit/slip': {
    means: 'A unit is written so that it is none: `MM` for `mm`, `meters` for `m`.',
    hurts:
      'Case counts in units: `mW` and `MW` lie a thousand million apart. A number whose unit has to be guessed counts as missing, and what rests on it is not computed.',
    remedy: 'Take the unit that was meant. Where only one can be meant, the fix writes it.',
  },
  'unit/thousandfold': {
    means:
      'The antenna height that was keyed is a thousand times too large or too small: millimetres where the receiver wants metres, or metres where it wants millimetres. Or a tape reading agrees with the other one of its time as soon as metres are read as millimetres, or millimetres as metres.',
    hurts:
      'The base broadcasts an antenna a kilometre and a half up in the air, or on the ground. Some receivers refuse it, others do not.',
    remedy:
      'For a reading, the fix offers the unit in which it agrees; only the person who read the tape knows. For a keyed number: key the right one, note when (`keyed … at 09:05`), and shift the points that were measured before. What was keyed is a fact of the day and stays in the notes. The fix adds a line with open values for what was keyed later, if anything was.',
  },
};
