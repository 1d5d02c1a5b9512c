/** Said once, at the foot of every page and at the head of the summary. */
export const whatThisIs =
  'This notebook is a record of what two households agreed. It gives no legal or engineering advice, moves no boundary, and nothing in it binds anyone until all parties of both households have signed.'

export const jobInOneSentence =
  'A notebook that two households keep about one boundary fence: where it stands, how high, who pays for what, who has given what, and a paper that both sign.'
