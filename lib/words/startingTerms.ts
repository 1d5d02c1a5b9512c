/** A topic that two households should settle, with wordings to begin from. None of them is agreed until both mark it. */
export type StartingTopic = {
  readonly topic: string
  /** Why it matters, in one sentence. */
  readonly about: string
  /** The first is what a new notebook begins with. */
  readonly wordings: readonly { readonly label: string; readonly text: string }[]
  /** Shown wherever the wording touches rights in land or could hurt someone. */
  readonly caution?: string
}

/** Common practice, no source: what agreements between neighbours about a fence usually settle. */
export const startingTopics: readonly StartingTopic[] = [
  {
    topic: 'What the fence is to the line',
    about: 'Whether the fence marks the boundary, or only stands near it.',
    wordings: [
      {
        label: 'Not the boundary, strip used by permission',
        text: 'The fence is not the boundary. Where it stands off the line, the strip between fence and line stays the land of its owner. The other household uses it by permission, which can be taken back, and gains no right to it.',
      },
      {
        label: 'The boundary as surveyed',
        text: 'The fence follows the boundary as surveyed. Where the posts stand off the line, the distances are written in this notebook.',
      },
      {
        label: 'Ask a lawyer first',
        text: 'What the fence is to the boundary is left open. Before anything is built, both households ask a lawyer and write the answer here.',
      },
    ],
    caution:
      'This touches rights in land. Signing over an uncertain line can in some places make a boundary, and long use of a strip can make a right. Ask a lawyer where it matters.',
  },
  {
    topic: 'Who owns and keeps each part',
    about: 'Who owns the fence afterwards, and who repairs what.',
    wordings: [
      {
        label: 'Both own, both keep',
        text: 'What stands on the line belongs to both households in halves, and both keep it up in halves. What the pages of the sections and gates say otherwise takes precedence.',
      },
      {
        label: 'Each owns what stands on its land',
        text: 'Each household owns and keeps up what stands on its own land, whoever paid for it. What stands on the line belongs to both households. What the pages of the sections and gates say otherwise takes precedence.',
      },
    ],
    caution:
      'This touches rights in land. What is built wholly on one household’s land may belong to that household, whoever paid. Ask a lawyer where it matters.',
  },
  {
    topic: 'Passage through gates on the line',
    about: 'Whether passing through a gate on the line is a favour or a lasting right.',
    wordings: [
      {
        label: 'Permission that can be taken back',
        text: 'Each household lets the other pass through the gates on the line. This is a permission. Either household can take it back by telling the other in writing, thirty days ahead.',
      },
      {
        label: 'A lasting right',
        text: 'Both households mean the passage through the gates on the line to last, for later owners too. They will have it put into the form that local law asks for.',
      },
      { label: 'No passage', text: 'The gates on the line are for upkeep and emergencies only.' },
    ],
    caution:
      'This touches rights in land. A lasting right of passage usually binds later owners only when it is in due form and on the land records. Ask a lawyer.',
  },
  {
    topic: 'Access for the work',
    about: 'When and where the builders may enter the other household’s land.',
    wordings: [
      {
        label: 'Days, hours, area, making good',
        text: 'While the fence is built, those who work on it may enter a strip of 6 ft along the line on the other household’s land, on working days from 8 in the morning to 6 in the evening, told two days ahead. They keep animals in, make good what they damage, and leave the strip as they found it. Whoever brings in workers sees that they are insured.',
      },
      {
        label: 'Only when asked each time',
        text: 'Those who work on the fence ask each time before they enter the other household’s land.',
      },
    ],
  },
  {
    topic: 'Access for upkeep',
    about: 'How the fence is reached for repairs later on.',
    wordings: [
      {
        label: 'Told ahead',
        text: 'For repairs, either household may enter a strip of 6 ft along the fence on the other’s land, told three days ahead, or at once where animals or people are at risk. It makes good what it damages.',
      },
    ],
    caution:
      'A right to enter that should bind later owners needs due form and may need the land records. Ask a lawyer.',
  },
  {
    topic: 'The old fence',
    about: 'Whose it is, who takes it down, who keeps the material, what happens to the footings.',
    wordings: [
      {
        label: 'Shared, material kept by whoever removes it',
        text: 'The old fence belongs to both households. Both agree that it comes down. Whoever takes it down keeps its material, save what this notebook counts as a credit, and takes the old footings out to a depth of 2 ft.',
      },
      {
        label: 'Belongs to one household',
        text: 'The old fence belongs to one household, which agrees that it comes down and keeps its material. The old footings stay in the ground where they are in nobody’s way.',
      },
    ],
    caution:
      'Old paint can hold lead and old treated timber can hold poisons: ask how to handle and dispose of them before cutting or burning.',
  },
  {
    topic: 'Damage',
    about: 'Who pays when someone or something breaks the fence.',
    wordings: [
      {
        label: 'Whoever caused it; else as upkeep',
        text: 'Whoever damages the fence, or whose animals, trees or visitors damage it, has it repaired within thirty days. Damage that nobody caused is repaired like upkeep.',
      },
    ],
  },
  {
    topic: 'What may be hung or planted on it',
    about: 'Vines, screens, boards and lights add load and wind to a fence.',
    wordings: [
      {
        label: 'Light things on one’s own side',
        text: 'Each household may hang light things and train light plants on its own side. Boards, screens, woven strips and heavy vines need the other household’s word first.',
      },
      { label: 'Nothing', text: 'Nothing is hung on the fence or planted against it.' },
    ],
    caution:
      'Boards, screens, strips and dense plants catch wind that the posts may not be made for. Have a licensed engineer look at it first.',
  },
  {
    topic: 'If it stops',
    about:
      'What happens if the work is not begun or not finished, a house is sold, or someone falls ill or dies.',
    wordings: [
      {
        label: 'Start by, stand by, and what then',
        text: 'Work starts within three months of signing and the fence stands within a year. If it stops for longer, each household owes its share of what has been built and bought until then, and the site is made safe for people and animals. If a house is sold, or someone falls ill or dies, what has been given until then is settled first; whoever follows is asked whether to go on. A balance that is not paid stays owed.',
      },
    ],
    caution:
      'An agreement like this may not bind a later owner or an estate. Ask a lawyer where it matters, and mention the fence when selling.',
  },
  {
    topic: 'Who is asked first in a dispute',
    about: 'Somebody both trust, before anyone goes to court.',
    wordings: [
      {
        label: 'Talk, then somebody both trust',
        text: 'If the households disagree, they first sit down together. If that does not settle it within two weeks, they ask somebody whom both trust, and share the cost in halves. Until then neither changes the fence.',
      },
    ],
    caution:
      'Talking first does not stop the time limits that a court or an office may set. Ask a lawyer in time.',
  },
  {
    topic: 'The end of its life',
    about: 'Who decides that it is worn out, and who takes it away.',
    wordings: [
      {
        label: 'Decided together, shared in halves',
        text: 'When the fence is worn out, both households decide together whether to repair, replace or remove it. Taking it away is shared in halves, and so is what its materials bring.',
      },
    ],
  },
]

/** The starting topic with this name, where there is one. */
export function startingTopic(topic: string): StartingTopic | undefined {
  return startingTopics.find((one) => one.topic === topic.trim())
}

/** The terms of a new notebook: the first wording of each topic, to be edited. */
export function startingTerms(): { topic: string; text: string }[] {
  return startingTopics.map(({ topic, wordings }) => ({ topic, text: wordings[0]?.text ?? '' }))
}
