/** A first letter of invented households, all of it written. */
export const writtenLetter = {
  wrong: 'Three posts are rotten.',
  proposed: 'New mesh on steel posts.',
  workFrom: '2027-05-03',
  workTo: '2027-05-30',
  noticeDays: '30',
  saidBy: 'the town clerk, by phone on 2 February',
  answerTo: 'At our door, 3 Bank Road.',
  on: '2027-03-01',
}
