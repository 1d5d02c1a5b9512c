/** Trade terms that the forms ask for. */
export const terms = [
  'station',
  'setback',
  'grade',
  'bay',
  'deduction',
  'footing',
  'opening',
  'rake',
  'kerf',
] as const
export type Term = (typeof terms)[number]

type TermWords = {
  readonly question: string
  readonly answer: string
  /** What the drawing beside it shows, for whoever does not see it. */
  readonly drawing: string
}

export const termWords: Readonly<Record<Term, TermWords>> = {
  station: {
    question: 'What is a station?',
    answer:
      'A point on the boundary line, told by how far it lies from the start of the line. Station 24 ft is 24 ft along, however the ground rises or falls between.',
    drawing: 'A line with a mark at its start and two stations further along it.',
  },
  setback: {
    question: 'What is a setback?',
    answer:
      'How far the fence stands off the boundary line, measured square to it. Say on whose land it stands there: the strip between fence and line stays the land of its owner.',
    drawing:
      'Seen from above: the boundary line between two gardens, the fence beside it, and the distance between the two.',
  },
  grade: {
    question: 'What is a grade?',
    answer:
      'The height of the ground at a point, measured up or down from one level that you choose. A pipe level, or a string and a line level, is enough to find it.',
    drawing: 'Seen from the side: a level line, the ground rising above it, and the height between the two.',
  },
  bay: {
    question: 'What is a bay?',
    answer:
      'The stretch from the centre of one post to the centre of the next. The largest spacing decides how many there are; equal bays share the length out evenly.',
    drawing: 'Three posts with two rails, and the distance from the centre of one post to that of the next.',
  },
  deduction: {
    question: 'What is a deduction?',
    answer:
      'What a post is cut shorter than the fence is high, because the rail lies on it or in it. Where it is left empty, it is worked out from the sizes of rail and post.',
    drawing:
      'A rail, seen on its end, in a saddle on a post: the rail’s top is higher than the top of the post.',
  },
  footing: {
    question: 'What is a footing?',
    answer:
      'What holds a post in the ground: the hole, and the concrete or tamped earth that fills it. Its depth has to reach below frost; ask what is usual where you live.',
    drawing:
      'Seen from the side: a post in a hole that is filled up to the ground, with gravel at its bottom.',
  },
  opening: {
    question: 'What is the clear opening?',
    answer:
      'The free width between the two gate posts, face to face, that you walk or drive through. The leaf is narrower than that by its clearances.',
    drawing: 'Two gate posts with a leaf between them, and the distance from face to face of the posts.',
  },
  rake: {
    question: 'Raked or stepped?',
    answer:
      'On a slope a raked fence follows the ground with its rails; a stepped one keeps each bay level and drops from post to post. Steps leave gaps below them, which animals find.',
    drawing:
      'On the same slope: on the left rails that follow it, on the right bays that are level, in steps.',
  },
  kerf: {
    question: 'What is a kerf?',
    answer:
      'What a saw turns into dust or chips at each cut. A cut plan counts it, so that the last piece does not come out short.',
    drawing: 'A bar that is cut in two, with the width of the cut marked between the pieces.',
  },
}
