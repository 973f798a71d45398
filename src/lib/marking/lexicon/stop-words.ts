/**
 * Words that carry no content for matching, and those that always do.
 *
 * Words with a space or a line break between them.
 */

/** Function words: no content of their own. No negation, no direction, no quantity is among them. */
export const stopWords = `
a an the
i me my mine myself we us our ours ourselves you your yours yourself yourselves
he him his himself she her hers herself it its itself they them their theirs themselves
this that these those there here
who whom whose which what
am is are was were be been being
have has had having do does did doing done
will would shall should can could may might must ought
'm 're 've 's 'd 'll
and or but so if then than as because since while whilst when where whereas although though however therefore thus hence whether
of at for by on with about
also too very quite rather really just even still already yet again else
oh ok okay well yes yeah um er hmm
etc eg ie viz
`

/** Words that carry little in a point: left out of what must be found, unless nothing else is left. */
export const fillers = `
called known named termed said refer refers referred means meaning
example examples instance such including includes
way ways thing things something stuff
type types kind kinds sort sorts form
mainly usually generally normally often typically basically commonly mostly essentially
particular particularly certain various different several
able allow allows give gives gave given giving become becomes became have has had cause causes caused
important especially specific specifically
one ones another other others
get gets got getting go goes going make makes made making take takes taken use used using
part parts
people person someone somebody
also like
actually simply obviously clearly effectively
`

/** Prepositions and particles of place, time and direction: never thrown away. */
export const directional = `
up down in out into to onto inside outside from to toward towards away
above below over under beneath underneath through along across around round between among
before after behind beside near past against off back forward forwards backward backwards inward inwards outward outwards
upward upwards downward downwards upstream downstream within without during until till
`

/** Words that turn a statement round. */
export const negations = `
no not never none neither nor cannot nobody nothing nowhere without
can't won't don't doesn't didn't isn't aren't wasn't weren't hasn't haven't hadn't wouldn't shouldn't couldn't mustn't needn't ain't
cant wont dont doesnt didnt isnt arent wasnt werent hasnt havent hadnt wouldnt shouldnt couldnt
`

/** Words of quantity: never thrown away. */
export const quantities = `
all both each every any some none many much more most few fewer fewest less least little half twice double
only enough too several both either neither
`
