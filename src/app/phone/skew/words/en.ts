/** Words of the room that measures how square a part is, on paper in two photos. */
const en = {
  how: {
    title: 'How to take the two photos',
    drawing:
      'A4 paper seen from above on a dark table, its long side left to right. A square part lies in its middle. A bent arrow turns the part over, left for right.',
    sheet: 'A4, long side along the front',
    part: 'part, front side towards you',
    over: 'then turned over, left for right',
    list: [
      'Print a flat square of 100 mm or so, clearly darker than paper. Mark its front side before you take it off.',
      'Lay white A4 paper flat on a dark table. Lay the part in the middle, its front side along a long side of the paper.',
      'Photo 1: the part as it was printed, upper side up. Photo 2: turned over, left for right, the same front side towards you.',
      'Take both from straight above: all of the paper, some table round it, soft light, no hard shadow beside the part.',
    ],
  },
  photos: {
    first: { title: 'Photo 1, as it was printed', take: 'Take photo 1', choose: 'Choose photo 1' },
    second: { title: 'Photo 2, turned over', take: 'Take photo 2', choose: 'Choose photo 2' },
  },
  outlines: 'The photo with the outlines of paper and part as they were found',
  seen: (along: string, across: string) => `Found: paper and part, about ${along} by ${across} mm.`,
  result: {
    title: 'What both photos say',
    over: (value: string) => `Out of square by ${value} in 100 mm.`,
    sharp: 'The corners front left and back right are sharper than 90°.',
    wide: 'The corners front left and back right are wider than 90°.',
    square: 'Square as far as these photos tell.',
    sheet: (value: string) =>
      `Paper and lens had added ${value} in 100 mm to each photo: turning the part over takes it out.`,
    interval: 'The ± holds about 95 %. Two more photos, paper and part laid anew, show whether it stays.',
    both: 'Both photos are needed: the second one takes out what paper and lens add.',
  },
  /** Why a photo says nothing, and what would be accepted. */
  refusal: {
    'no sheet':
      'No paper was found. Lay white A4 paper on a clearly darker table, and have all four corners in the picture.',
    'sheet cut off':
      'The paper runs out of the picture, or the table is as light as the paper. Show all four corners, and some darker table round them.',
    'no part': 'No part was found on the paper. It has to be clearly darker: a coloured or dark filament.',
    'no square part':
      'What lies on the paper does not have four straight sides. Lay one flat square or rectangle on it, nothing else, without a hard shadow beside it.',
    'part too small': 'The part is too small to tell an angle: sides of 40 mm at least, 100 mm are good.',
    blurred:
      'The photo is out of focus or shaken: the edges are smeared. Tap the part to focus, hold still, and take it again.',
    'too oblique': 'The photo was taken too much from one side. Hold the phone level, straight above the paper.',
    askew:
      'The part lies turned on the paper. Lay its front side along a long side of the paper, by eye, and take the photo again.',
    'not turned over':
      'Both photos lean the same way: was the part turned over, left for right, with the same side towards you? Take photo 2 again. Paper cut askew does it too: try another.',
  },
};
export default en;
