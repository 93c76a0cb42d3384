import type { Room } from '../rooms.ts';

/** What one does in a room: a thing to do, and how. Labels of the app stand between asterisks. */
type HowTo = readonly [what: string, how: string];

/** The page of help of a room. */
export interface RoomHelp {
  /** What the room is for, in two or three sentences. */
  readonly about: string;
  /** What its picture shows, for those who do not see it. */
  readonly picture: string;
  readonly howTo: readonly HowTo[];
}

/** Help of every room. */
export const ROOM_HELP: Readonly<Record<Room, RoomHelp>> = {
  drawer: {
    about:
      'Shapes are outlines in millimetres; a screen carries one or more of them, each at its place on the sheet. Everything else is printed from these screens.',
    picture: 'The Drawer: shapes on the left, a screen on the sheet in the middle, the list of screens on the right.',
    howTo: [
      [
        'Bring in drawings',
        'Drop SVG files anywhere in the room, or press *Choose SVG files…*. Lines become what their pen covers. A drawing of several groups or colours asks whether it is one shape or many.',
      ],
      [
        'Trace a cut-out or a scan',
        'Drop a photo or scan (PNG, JPEG, WebP), or press *Trace a picture…*: uneven light is taken out, specks are left out, and a line drawn over something of known length gives the size.',
      ],
      [
        'Draw, cut and join',
        '*Draw a shape…*: freehand, or point by point with mouse, finger or keys; a drag pulls handles out of a point. On a chosen shape *Cut and join…* joins it with another, cuts one from the other, welds, mirrors, turns, grows, shrinks and repeats it by mm. *Cut along a line…* goes through it as with a blade.',
      ],
      [
        'Make a screen',
        'Choose a shape: it becomes a screen of its own, or goes onto the chosen screen with *Add to the screen*. Drag it on the sheet, or type its place, turn and size beside it.',
      ],
      ['Set the paper', 'Size and margins of the sheet stand behind the button beside the heading of the screens.'],
      ['Say what is made', 'A screen is drawn, to make or made. The Wall can keep to those at hand.'],
      ['Go on', '*Put on the Bench* lays the screen on the stack as its last pull.'],
    ],
  },
  inks: {
    about:
      'An ink is how much light its film scatters and absorbs in 36 bands, so that it can be worked out what it does over any other. The chart shows every ink over every other; it is an estimate until it is checked against a real pull.',
    picture: 'Inks: the shelf of inks on the left, the chart of every ink over every other in the middle.',
    howTo: [
      [
        'Add an ink',
        'Press *Add an ink*: from a measurement file, from two colours of a drawdown (one over white, one over black), picked from a photo, or from one colour as a guess.',
      ],
      [
        'Mix and let down',
        'Open *Let it down* below the ink’s colours, or press *Match a colour* to find a mix of stock inks for a colour.',
      ],
      ['Read a colour', 'Point at a square of the chart; click it for its curve.'],
      [
        'Check it against a pull',
        '*Print as a target* gives squares to pull; *Pull these 12* only the few that tell most. *Put in what you measured* fits inks and trapping to it.',
      ],
    ],
  },
  wall: {
    about:
      'The Wall hangs many different prints that your screens and inks can make, the most different first. The same name and settings always hang the same prints.',
    picture: 'The Wall: many prints hanging, settings on the left, and the selected print with what sets it apart.',
    howTo: [
      ['Look', 'Walk along the prints with the arrow keys or a click; *Closer* and *Further*, a wheel or two fingers bring them nearer.'],
      [
        'Say what may change',
        'Order, inks, how pulls lie, what is left out: in the settings. *What must stay* holds a pull first, last, in its ink or under another.',
      ],
      ['Keep', '*Keep* puts a print into the Chest as a recipe; *Pin* hangs it first on every later wall.'],
      [
        'Find more like it',
        '*More from this print* finds others nearer to it or away from it; of two selected ones, what lies between, or crosses.',
      ],
      [
        'Arrange',
        '*Arrange* by measures, alike side by side, or as you choose: it learns from what you select, pin, keep and answer, and can be told to forget. Once it knows enough, *More as I choose* finds further prints by it.',
      ],
      [
        'Before a visit',
        '*Screens to make* tells which screens to have made, how many of the chosen prints each number of them gives, and what each print lacks.',
      ],
    ],
  },
  bench: {
    about: 'One stack, large. The strip below shows the sheet after every pull, from bare paper to the last one down.',
    picture: 'The Bench: a print in the middle, its pull beside it, the strip of its states below.',
    howTo: [
      ['Change the order', 'Drag a state along the strip, or choose it and press Alt with an arrow.'],
      [
        'Change a pull',
        'Choose its state: ink, strokes and offset stand beside the print. Drag on the picture, or use the arrow keys, to move it.',
      ],
      ['Read a place', 'Click the picture: its colour, how far it may be off, and which pulls lie there.'],
      ['Soften it', '*Find a veil* looks for one more translucent pull that softens the contrast between what lies under it.'],
      ['See what next', '*What next?* hangs what one more pull, or several, would make of it.'],
      [
        'Look from afar',
        'Under *Films apart, two prints, from afar…*: lift the films, wipe or blink between two prints, see it from 0.5, 2 and 8 m, or one place of it on six sheets out of register.',
      ],
      ['Keep it', '*Keep as recipe* puts it into the Chest.'],
    ],
  },
  chest: {
    about:
      'The Chest holds the recipes that you kept: each has all that is needed to build its print, and says where it came from. Visits to the press, and what was pulled in them, stand below.',
    picture: 'The Chest: kept recipes with their pictures and what can be done with each.',
    howTo: [
      ['See how it is built', '*How it is built* shows it pull by pull.'],
      ['Take it to the press', '*Take to Press* gives it sheets there.'],
      ['Print an edition', '*Edition…* numbers the sheets, proofs and signatures, and writes their papers.'],
      [
        'Give it away',
        '*Save as a file*, or *Save as a picture…*: the picture carries its recipe, and gives it back when it is dropped here.',
      ],
    ],
  },
  press: {
    about:
      'The Press turns recipes and numbers of sheets into an order of set-ups: one screen in one ink at one offset, and the sheets it goes on. It says what dries when, and how near the order is to the least there can be.',
    picture: 'The Press: recipes with numbers of sheets, and the pull order as a grid of set-ups by sheets.',
    howTo: [
      [
        'Plan',
        'Give recipes their sheets, then press *Find the pull order*. *Studio figures* are yours to set: hours, drying, racks, pulls an hour.',
      ],
      [
        'Shorten it',
        'Read the advice below the order: each line was planned anew, and says what it saves and what it changes in the prints.',
      ],
      [
        'Larger than the bed',
        '*Cut into sections…*, below a print that has sheets, makes each section a print with stencils, films and set-ups of its own.',
      ],
      ['Print the papers', 'A bench sheet a day, cards, passports, tickets for buckets, stencils to prepare: as PDF or printed.'],
      [
        'Log at the press',
        'Tick sheets as they are pulled. *Several differently…* and spoiled sheets are said in a tap or two; the clock follows what was really done.',
      ],
      [
        'When the day goes otherwise',
        '*Plan the rest* finds an order for what is left, never worse than going on as before; it can be undone.',
      ],
      ['Take it along', 'The visit is one file for another tablet; one set-up goes to a phone by a code.'],
    ],
  },
  lesson: {
    about:
      'All orders of two to six pulls, grouped into the prints that really differ. For showing, and for finding out, why order matters in one place and not in another.',
    picture: 'The Lesson: a large print, its pulls beside it, and all the different prints around.',
    howTo: [
      ['Build it', 'Press the space bar: one pull more on the sheet.'],
      ['Change the order', 'Drag a pull in the list beside the print, or use its two arrows.'],
      ['Make prints alike', 'Make an ink clearer or more opaque, or move a shape, and watch prints fall together.'],
      ['Compare', 'Choose two prints to blink between them, with the place outlined where they differ.'],
      ['Guess first', '*Guess* hides the answer until it is asked for; *Levels* set goals and check them.'],
      [
        'In a class',
        '*Projector* fills the screen; *Handout…* is a PDF with answers on a page of their own; *Link…* opens the lesson beside a student’s own project.',
      ],
    ],
  },
};
