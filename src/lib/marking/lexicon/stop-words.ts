export const stopWords = `
the a an of is are was were be been being am it its they them their theirs this that these those he him his she her hers i me my we us our you your
to at by for with and or as on per
do does did doing done has have had having will would can could may might must shall should
who whom which what when where why how there here if then so than too very just also about such each other another some any
because since due while whereas although though but however therefore thus hence
s t d m ll re ve
`
export const filler = `
called known named example eg ie etc way ways thing things stuff type types kind kinds sort sorts mainly mostly usually normally generally often always sometimes really quite
get gets got getting give gives gave given go goes went going make makes made making take takes took taken taking put puts let lets use uses used using have keep keeps kept
come comes came coming become becomes became one ones own case fact certain main
find found say said says mean means meant tell told see seen show shown being able lot lots little bit both all every whole only even still again
`
export const directionalPrepositions = `
up down in out into from above below towards toward away over under through along across between before after behind onto off back beneath beside inside outside around against without within upon beyond
`
