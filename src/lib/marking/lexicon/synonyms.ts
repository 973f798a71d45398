/**
 * Words and short phrases that an examiner accepts for one another.
 *
 * One group a line, ", " between the members, verbs in base form (the code inflects). Groups do not chain: a word may stand
 * in several, and that does not make the others of those groups synonyms. A member in capitals (AC, RAM) is matched in capitals only.
 * A line that begins with "#" is a heading.
 */

/** Plain academic English: accepted for one another in nearly every subject. */
export const synonyms = `
# change of amount
increase, rise, go up, grow, get bigger, get larger, get higher, climb, become greater
decrease, fall, go down, drop, decline, shrink, get smaller, get lower, become less
reduce, cut, lower, bring down, lessen, decrease
raise, put up, bring up, increase
speed up, accelerate, go faster, get faster
slow down, decelerate, go slower, get slower
double, multiply by two, times two, twice as much, twice
halve, divide by two
stay the same, remain constant, not change, stay constant, remain the same, unchanged
vary, change, fluctuate
fluctuate, go up and down, rise and fall
expand, get bigger, swell, spread out
contract, shrink, get smaller
lengthen, get longer, make longer
shorten, get shorter, make shorter
widen, get wider, broaden, make wider
narrow, get narrower, make narrower, constrict
deepen, get deeper
steepen, get steeper
strengthen, get stronger, make stronger
weaken, get weaker, make weaker
thicken, get thicker
warm, warm up, heat, heat up, get hotter, get warmer
cool, cool down, get colder, get cooler, lose heat
dry out, dry up, lose water, become dry
brighten, get brighter
run out, be used up, be exhausted
run out of, use up
maximise, make as large as possible
minimise, make as small as possible, keep to a minimum
exceed, be more than, be greater than, go over, be higher than
more than, greater than, over, above, higher than, larger than
less than, fewer than, below, under, lower than, smaller than
at least, a minimum of, no less than
at most, a maximum of, no more than
about, approximately, roughly, around, nearly
almost, nearly
exactly, precisely
extra, additional, further, more
excess, too much, surplus
lack, absence, shortage, not enough
shortage, lack, scarcity, not enough, too little
insufficient, not enough, too little, inadequate
sufficient, enough, adequate
plenty, lots, a lot, abundance
many, a lot of, lots of, loads of, numerous, plenty of, a large number of
much, a lot of, lots of, loads of
few, not many, a small number of, hardly any
several, a number of
a few, some, several
all, every, each, the whole
whole, entire, all of
none, not any, zero
total, sum, overall amount
number, quantity, amount
proportion, percentage, share, fraction
half, 50%, fifty percent
majority, most
minority, small number
maximum, highest, greatest, largest, peak, most
minimum, lowest, smallest, least
# size, speed, quality
fast, quick, rapid, speedy, swift
quickly, rapidly, fast, at a fast rate
slowly, gradually, at a slow rate
gradual, slow, steady, little by little
sudden, abrupt, sharp
big, large, great
huge, enormous, massive, vast, very large, very big
small, little
tiny, minute, very small, microscopic
tall, high
long, lengthy
wide, broad
narrow, thin
strong, powerful
weak, feeble
easy, simple, straightforward
important, significant, vital, essential, crucial, key
necessary, needed, required, essential
main, chief, principal, major, key, most important
major, big, important
minor, small, unimportant
same, identical, equal
similar, alike, much the same
different, unlike, not the same, dissimilar
opposite, reverse
common, widespread, frequent
rare, uncommon, unusual, scarce
usual, normal, typical, ordinary
unusual, abnormal, not normal
often, frequently, many times, a lot of the time
rarely, seldom, hardly ever, not often
always, all the time, every time
sometimes, occasionally, at times, now and then
usually, normally, generally, mostly, most of the time
never, at no time
constantly, continually, all the time, continuously
repeatedly, again and again, over and over
again, once more
immediately, straight away, at once, instantly
instant, immediate
at the same time, simultaneously, together
temporary, short-lived, not permanent
permanent, lasting, for ever
old, ancient
new, recent, modern
modern, up to date
final, last
previous, earlier, before
next, following
future, to come
daily, every day, each day
weekly, every week
monthly, every month
yearly, annual, annually, every year, each year
century, hundred years
decade, ten years
dirty, polluted, unclean, contaminated
dangerous, unsafe, hazardous, risky
safe, not dangerous, harmless
harmful, damaging, bad for
poisonous, toxic
toxin, poison
helpful, useful, beneficial
useful, of use
effective, works well
efficient, little waste
cheap, inexpensive, low cost
expensive, dear, costly, high price, costs a lot
rich, wealthy, well off
poor, in poverty, less well off
free, without charge
hot, at a high temperature
cold, at a low temperature
wet, damp, moist
dry, arid
bright, intense
see-through, transparent, clear
rough, uneven
flat, level
steep, sharp slope
sharp, pointed
hollow, empty inside
stiff, rigid, not flexible
flexible, bendy, pliable
brittle, breaks easily
fragile, easily broken, delicate
sticky, adhesive
steady, stable
unstable, not stable
loose, not tight
closely packed, tightly packed, close together
far apart, spread out, widely spaced
random, haphazard, no pattern
regular, ordered
complex, complicated
complete, full, whole
incomplete, partial, not complete
empty, vacant
full, filled
visible, can be seen
invisible, cannot be seen
mobile, free to move, able to move
fixed, cannot move
able to, can, capable of
unable to, cannot, can not
likely, probable
unlikely, improbable
possible, can happen
impossible, cannot happen
certain, sure, definite
true, correct, right
wrong, incorrect, false
unfair, unjust
accurate, close to the true value
artificial, man-made, synthetic
natural, not man-made
healthy, well, in good health
ill, sick, unwell
illness, sickness, disease
dead, no longer alive
alive, living
young, immature
adult, grown-up
famous, well known
local, nearby
global, worldwide
overseas, abroad
domestic, home
foreign, from abroad
rural, countryside
urban, built-up, town
# making, changing, breaking
make, produce, create, form, generate
build, construct, put up
build up, accumulate, collect, pile up
start, begin, commence, set off
stop, prevent, block, halt
stop, end, finish, cease
continue, carry on, keep going, go on
change, alter, modify
change into, turn into, become, convert into, transform into
convert, change, transform, turn
replace, swap, substitute
exchange, swap, trade
switch, swap
improve, get better, make better, enhance
worsen, get worse, deteriorate
damage, harm, hurt
destroy, wreck, ruin
break, snap, fracture
break down, decompose, break up
break up, split up, fall apart
break apart, split
split, divide, separate
separate, part, split up
remove, take away, take out, get rid of
get rid of, dispose of, throw away, remove
throw away, dispose of, dump
clear, remove
add, put in, mix in
mix, blend, stir together
join, connect, link, attach
combine, join together, come together, put together
attach, stick, fix, fasten
stick together, hold together
hold in place, keep in place, secure
surround, go around, enclose
cover, coat
contain, have, hold, include
consist of, be made of, be made up of, be composed of
made of, made from, made up of, composed of, consists of
fill, fill up
empty, drain
store, keep, hold
collect, gather
concentrate, make stronger
dilute, water down, make weaker
heat, warm, make hotter
burn, combust, set fire to
burn, be on fire
melt, turn to liquid, turn into a liquid, become liquid
freeze, solidify, turn solid, turn into a solid
evaporate, turn to vapour, turn to gas, turn into a gas, turn into vapour
condense, turn back to liquid, turn into a liquid
dissolve, go into solution
filter, strain, sieve
cut, chop, slice
cut down, fell, chop down
grind, crush
crush, squash, squeeze
squeeze, press, compress
press, push down
stretch, pull, extend
bend, curve, flex
twist, turn
fold, crumple
tear, rip
scrape, scratch, rub
wear away, erode
wear down, erode
wash away, carry away
dig, excavate
repair, mend, fix
maintain, keep up, look after
protect, keep safe, guard, shield, defend
preserve, keep
save, conserve
waste, squander
recycle, use again, reuse
test, check
copy, duplicate, replicate
multiply, reproduce
spread, disperse, scatter
close, shut
cause, lead to, result in, bring about, make happen
trigger, set off, start, initiate
stimulate, encourage
encourage, promote, support
discourage, put off, deter
allow, let, permit, enable
prevent, stop, block, not allow
forbid, ban, prohibit, not allow
help, assist, aid
hinder, get in the way of, hold back
affect, influence, have an effect on
control, regulate
restrict, limit, hold back
happen, occur, take place
appear, show up, emerge
disappear, vanish, go away
# moving
move, go, travel
move, shift
move along, travel along
carry, transport, move, take
bring, carry, take
send, transmit
deliver, bring, supply
supply, provide, give
provide, supply, offer
receive, get, be given
obtain, get
take in, absorb, take up, soak up
give out, give off, emit, release
release, let out, let go, set free
leak, escape, seep
escape, get out, get away
enter, go in, go into, get into
leave, exit, go out, get out
arrive, reach, get to
return, go back, come back
come from, originate from, be from
pass through, go through, travel through, get through
pass on, hand on, transmit
flow, run, stream
flow out, drain
pour, tip
rise, go up, move up, move upwards
sink, go down, move down, go to the bottom
float, stay on the surface
cross, go across
spin, rotate, turn
orbit, go around, go round, travel around, revolve around
circulate, go round, move around
vibrate, shake, move back and forth, oscillate
shake, tremble
swing, move from side to side
bounce, rebound
bounce off, reflect
push, press
push away, repel
pull, drag
pull together, attract
pull towards, attract
push apart, repel
collide, hit, crash into, bump into
hit, strike, knock
collision, crash, impact
throw, chuck, hurl
trap, catch, hold
follow, come after
avoid, keep away from, stay away from
approach, get closer, come near, get nearer
meet, come together
settle, sink, fall to the bottom
pick up, lift, collect
lift, raise
slide, slip
spread out, move apart
towards, in the direction of
# place and time
next to, beside, adjacent, alongside, by
near, close to, nearby
far, distant, a long way
between, in the middle of
below, under, underneath, beneath, lower than
on top of, above
inside, within, in
outside, external
middle, centre
edge, boundary, border
top, upper part
bottom, base
area, region, zone
place, location, site
location, position, where
across, over
through, via
around, surrounding
everywhere, all over
before, prior to, earlier than
after, following, later than
during, while, as
until, up to
over time, with time, as time goes on, as time passes
time taken, how long, duration
speed, how fast
beginning, start
stage, step, phase
order, sequence
frequency, how often
distance, how far
depth, how deep
height, how high
length, how long
size, how big
weight, how heavy
age, how old
direction, way
# reasons and reasoning
because, since, due to, as a result of, owing to, on account of
therefore, so, thus, hence, as a result, consequently
so that, in order to
although, though, even though
but, however, yet
also, as well, too, in addition
and, plus
or, alternatively
if, when
unless, if not
each other, one another
by means of, by using, using
instead of, rather than, in place of
despite, in spite of
except, apart from, other than
such as, for example, like, e.g.
i.e., that is
compared with, compared to, relative to
depending on, according to
depend on, be determined by, be affected by
reason, cause, why
result, outcome, consequence
effect, result, impact, consequence
purpose, aim, function, job, role
aim, goal, objective, target
method, way, procedure
process, procedure
problem, difficulty, issue
advantage, benefit, plus point
disadvantage, drawback, downside
benefit, advantage, gain
risk, danger
chance, probability, likelihood
evidence, proof
example, instance
feature, characteristic, property
quality, standard
type, kind, sort
part, component, section
piece, bit, fragment
layer, coating, covering
group, set
shape, form
difference, contrast
similarity, likeness
relationship, link, connection
pattern, trend
trend, general direction
condition, situation
level, amount
show, demonstrate
show, indicate, reveal
prove, show to be true
suggest, imply
explain, give reasons for, say why
describe, say what
define, give the meaning of
identify, recognise, name, spot
find out, discover
discover, find, detect
detect, sense, notice, pick up
notice, see, spot
see, observe, notice
look at, examine, observe
look for, search for, seek
measure, find the size of
work out, find, calculate
estimate, guess roughly
count, find the number of
compare, look at differences between
record, note, write down
record, log
predict, forecast
know, be aware of
understand, make sense of
remember, recall, retrieve
forget, not remember, lose from memory
learn, pick up
think, believe
decide, choose, make a choice
choose, select, pick
choice, option, alternative
want, wish, desire
need, require
must, have to, need to
should, ought to
try, attempt
use, make use of, utilise
use up, consume
called, named, known as
mean, stand for
represent, stand for, show
belong to, be part of
own, have, possess
share, have in common
save, put aside
spend, pay out
earn, be paid, make
buy, purchase
sell, put on sale
pay, give money
lend, loan
borrow, take a loan
income, earnings, pay, money coming in
customer, buyer, shopper
buyer, purchaser
seller, vendor
firm, business, company
shop, store
factory, plant
worker, employee, member of staff
workers, employees, staff, labour, workforce
employer, boss
job, employment, work
unemployed, out of work, without a job, jobless
employ, hire, take on, recruit
dismiss, fire, sack
wage, pay, salary
make redundant, lay off
owner, proprietor
competitor, rival
government, state
tax, money paid to the government
law, legislation
vote, cast a ballot
leader, head, ruler
army, troops
soldier, troops
war, conflict, fighting
fight, battle
attack, invade
defeat, beat
rebel, revolt, rise up
refuse, reject, say no
reject, turn down
promise, pledge
treaty, agreement
ally, partner
# people, body, nature
people, humans, human beings, individuals
person, individual, human
child, kid, young person
baby, infant
parent, mother or father
offspring, young, children
mother, mum
father, dad
male, man
female, woman
doctor, physician
patient, ill person
animal, creature
living thing, organism
living things, organisms
food, nourishment
eat, feed on, consume
drink, take in liquid
breathe, take in air
breathe in, inhale, inspire
breathe out, exhale, expire
breathing, ventilation
sweat, perspire, perspiration
urine, wee, pee
faeces, poo, stools
belly, abdomen, tummy
windpipe, trachea
food pipe, gullet, oesophagus
voice box, larynx
womb, uterus
backbone, spine, vertebral column, spinal column
kneecap, patella
collarbone, clavicle
shoulder blade, scapula
skull, cranium
breastbone, sternum
jaw, jawbone
injury, wound, damage
pain, ache
infect, give a disease to
pregnant, expecting a baby
give birth, have a baby
die, be killed, perish
kill, destroy
survive, stay alive, live
survival, staying alive
live, inhabit
habitat, where an organism lives
die out, become extinct
extinct, died out
hunt, catch and eat
hide, conceal
weather, atmospheric conditions
rain, rainfall
storm, gale
wind, moving air
sea, ocean
river, stream
land, ground
soil, earth, ground
stone, rock
beach, shore
coast, shoreline, coastline
slope, gradient, incline
mountain, peak
valley, dale
forest, woodland, woods
field, farmland
farming, agriculture
flooding, being flooded
drought, long dry period
earthquake, tremor, quake
lake, loch
town, city
house, home, dwelling
road, street
car, vehicle
lorry, truck
plane, aircraft
ship, boat
rubbish, waste, litter
sewage, waste water
pollution, contamination
pollute, contaminate
light up, illuminate
loud, noisy
quiet, silent
smell, odour
taste, flavour
device, equipment, appliance, gadget
equipment, apparatus
tool, instrument
material, substance
substance, chemical
picture, image
diagram, drawing
graph, chart
message, signal
mistake, error
password, passcode
electricity, electrical energy
power cut, blackout
movement, motion
force, push or pull
heat, thermal energy
sun, sunlight
sunlight, light from the sun
difficult, hard, challenging
compact, tightly packed
get hot, heat up
go rusty, rust
go bad, go off, rot, decay
rot, decay, decompose
hard-wearing, durable, long-lasting, lasts a long time
lightweight, not heavy
heavy, weighs a lot
waterproof, keeps water out, water-resistant
keep out, not let in
let through, allow through, let pass
let in, allow in
not let through, block
in the same direction, the same way
in the opposite direction, the other way
side by side, next to each other
in front of, ahead of
behind, at the back of
at the end, finally
at first, to begin with, at the beginning, initially
in the end, eventually, finally
soon after, shortly after
long-term, in the long run, over a long time
short-term, in the short run, over a short time
worldwide, all over the world, around the world
nearby, close by
on its own, alone, by itself
on their own, alone, by themselves
without help, unaided
in pairs, two by two
one by one, one at a time
at random, randomly
on purpose, deliberately, intentionally
by accident, accidentally, by chance
made by people, man-made, human-made
caused by people, caused by humans, anthropogenic
good for the environment, environmentally friendly
bad for the environment, harmful to the environment
best, optimum, ideal
worst, poorest
popular, liked by many people
expensive to buy, high price
look like, resemble
look after, care for
take care of, look after
cope with, deal with, handle
carry out, do, perform, conduct
set up, establish
make sure, ensure
happen again, recur
be made, be produced, be formed
be lost, disappear
be left behind, remain, be left over
left over, remaining, left behind
remain, stay, be left
depend, rely
rely on, depend on
belong, be owned
take part, participate
work together, cooperate
fight off, resist
defend against, protect against, protect from
stop working, fail, break down
work, function, operate
use less, save
need less, require less
take longer, take more time
take less time, be quicker
cost more, be more expensive, be dearer
cost less, be cheaper
weigh more, be heavier
weigh less, be lighter
last longer, be more durable
contain more, have more
contain less, have less
produce more, make more
produce less, make less
more likely, higher chance, greater probability
less likely, lower chance, smaller probability
further apart, more spread out, farther apart
closer together, less spread out, nearer together
hit more often, collide more often, collide more frequently
high up, at altitude
underground, below ground, under the ground
underwater, under water, submerged
in the air, airborne
indoors, inside
at night, in the dark, after dark
by day, in the daytime
crowded, overcrowded, densely populated
empty of people, uninhabited
well fed, nourished
hungry, starving
starve, go without food
thirsty, needing water
tired, exhausted, fatigued
worried, anxious
afraid, scared, frightened
fear, being afraid
happy, pleased
sad, unhappy
angry, cross
calm, relaxed
memory loss, forgetting, amnesia
behave, act
thought, thinking
skill, ability
ability, capability
clever, intelligent
education, schooling
teach, educate
pupil, student
teenager, adolescent
old people, the elderly, older people
young people, youth
women, females
boy, male child
girl, female child
family, relatives
relative, family member
friend, mate
citizen, member of a country
immigrant, person moving in, person who moves in
emigrant, person moving out, person who moves out
refugee, person fleeing
traffic, vehicles
journey, trip
tourist, visitor, holidaymaker
holiday, vacation
meal, dish
cook, prepare food
bake, cook in an oven
clothes, clothing, garments
rope, cord
pipe, tube
hole, opening, gap
gap, space
bump, lump
ball, sphere
slope down, go downhill
slope up, go uphill
# plain words for school subjects
greater than, more than, exceed, higher than, bigger than, larger than, above
less than, lower than, fewer than, smaller than, below
carry, transport, move, take, bring, shift, push, shove
make, create, produce, form, generate, build
quick, fast, rapid, speedy
small, little, tiny
start, begin, commence
end, finish, stop, conclude
stop, prevent, block, hinder
let, allow, permit, enable
use, employ, apply, utilise
show, demonstrate, display, indicate
get, obtain, receive, gain
get rid of, remove, eliminate, take away
help, aid, assist, support
change, alter, vary, modify
change into, turn into, convert, transform, become, translate
keep, store, hold, retain
keep going, continue, carry on, go on
again and again, over and over, repeatedly, repeat, keep happening, keeps on, all over again
break, smash, shatter
break down, decompose
break up, split, divide
damage, harm, hurt, injure, attack
put together, combine, join, connect, link, attach, tie
join, connect, link, unite
separate, split, part
drop, deposit, dump, lay down, leave behind
settle, sink
gather, collect, accumulate, build up, pile up
trap, catch, capture, hold, stop
reach, arrive at, get to, approach, come in to, hit
hit, strike, collide, bump into, bang into, crash
flow, run, move
work out, calculate
measure, find
look at, observe, watch, examine
record, write down, note
see, observe
choose, pick, select
give off, give out, emit, release
take in, absorb
amount, quantity
amount, number
speed, rate
distance, length
edge, side, border
end, tip
ridge, bank
place, location, position, spot
angle, slant
at an angle, diagonally, obliquely, slantwise, on a slant, slanting
straight down, straight back, shortest way
at right angles, perpendicular, square on
along, parallel to
coast, coastline, shoreline, shore
sediment, material, sand, shingle
pebble, stone
mud, silt
prevailing, dominant, usual, most common, most frequent
sheltered, calm, protected, still
curved, bent, hooked
zigzag, saw-tooth, sawtooth
across, right across, all the way across
mainland, land
ridge of sand, sand bar
people, humans, persons
person, individual, someone, somebody
child, kid
buyer, customer, consumer, shopper
seller, supplier
good, product
job, work
money, cash
cost, expense
cheap, inexpensive
expensive, dear, costly
rise, go up, increase, climb
fall, go down, decrease, drop, decline, come down
lower, reduce, decrease
grow, get bigger, increase
more often, more frequent, more frequently
per second, each second, every second
each, every
same, equal, identical
different, not the same
rest position, equilibrium, middle line, rest line
greatest, maximum, biggest, highest, largest, max
smallest, minimum, least, lowest
about, approximately, roughly, around
nearly, almost
important, significant
main, chief, major
quickly, fast, rapidly
slowly, gradually, bit by bit
gradually, little by little
disappear, vanish, go
appear, turn up
remember, recall
forget, lose
learn, memorise
old, earlier, previous, past
new, later, recent
hard, difficult
easy, simple
correct, right, true, accurate
clear, see-through, transparent
colourless, no colour, clear
dangerous, unsafe, hazardous
safe, secure
pitch, note
heat, warm, warm up, heat up
cool, cool down
wash, rinse, clean
mix, stir, swirl
add, put in
empty, pour out
surface, top
part, piece, bit, section
piece, fragment, lump
particle, atom, molecule
tiny, microscopic
whole, entire, complete
enough, sufficient
extra, additional
spread out, disperse
squeeze, compress, squash
stretch, extend
pull, attract
push, repel
wait, leave
time, duration
next to, beside, adjacent, alongside
instead of, in place of, rather than
because of, due to, as a result of, caused by, owing to, thanks to
cause, lead to, result in, bring about, make
protect, defend, guard
danger, risk, hazard
law, rule
agree, consent
answer, reply, respond
ask, request
fix, repair, mend
test, try, trial
result, outcome, effect
reason, cause
purpose, aim, goal
idea, concept
use, purpose
kind, type, sort
sell, trade
pay, spend
borrow, take out a loan
owe, be in debt
save, put by
tax, duty
house, home
illness, disease
die, be killed
food, nutrients
eat, feed on
live, dwell
plant, vegetation
inherit, be passed on
grown-up, adult
woman, female
man, male
war, conflict
ruler, monarch, king
country, nation, state
leader, head
win, defeat, beat
law, act
data, information
computer, machine
device, gadget
message, data
look up, search for, find
copy, duplicate
delete, erase, wipe
deleted, erased
encrypt, scramble
unreadable, cannot be read, can't be read
guarantee, ensure, make sure
check, verify, test
`

/** Technical equivalents and abbreviations, by subject. */
export const scienceSynonyms = `
# biology
red blood cell, erythrocyte
white blood cell, leucocyte, leukocyte
platelet, thrombocyte
adenosine triphosphate, ATP
adenosine diphosphate, ADP
deoxyribonucleic acid, DNA
ribonucleic acid, RNA
messenger RNA, mRNA
transfer RNA, tRNA
ribosomal RNA, rRNA
human immunodeficiency virus, HIV
acquired immune deficiency syndrome, AIDS
central nervous system, CNS
peripheral nervous system, PNS
autonomic nervous system, ANS
electrocardiogram, ECG
body mass index, BMI
basal metabolic rate, BMR
coronary heart disease, CHD
cardiovascular disease, CVD
chronic obstructive pulmonary disease, COPD
in vitro fertilisation, IVF
follicle-stimulating hormone, follicle stimulating hormone, FSH
luteinising hormone, LH
antidiuretic hormone, anti-diuretic hormone, ADH
thyroid-stimulating hormone, TSH
human chorionic gonadotropin, HCG
genetically modified, GM, genetically engineered
genetically modified organism, GMO
genetic modification, genetic engineering
polymerase chain reaction, PCR
tuberculosis, TB
sexually transmitted infection, STI
methicillin-resistant staphylococcus aureus, MRSA
magnetic resonance imaging, MRI
computerised tomography, CT
nicotinamide adenine dinucleotide, NAD
gross primary productivity, GPP
net primary productivity, NPP
biological oxygen demand, biochemical oxygen demand, BOD
cell membrane, plasma membrane, cell surface membrane
rough endoplasmic reticulum, RER, rough ER
smooth endoplasmic reticulum, SER, smooth ER
Golgi apparatus, Golgi body
neurone, neuron, nerve cell
sensory neurone, afferent neurone
motor neurone, efferent neurone
relay neurone, interneurone, intermediate neurone
sex cell, gamete
egg, egg cell, ovum
sperm, sperm cell, spermatozoon
fertilised egg, fertilised egg cell, zygote
body cell, somatic cell
programmed cell death, apoptosis
wind pipe, windpipe, trachea
oesophagus, gullet, food pipe
large intestine, large bowel
small intestine, small bowel
alimentary canal, digestive tract, gut
uterus, womb
oviduct, fallopian tube
thigh bone, femur
shin bone, shinbone, tibia
kneecap, patella
jaw bone, jawbone, mandible
collar bone, collarbone, clavicle
shoulder blade, scapula
breast bone, breastbone, sternum
spine, backbone, vertebral column, spinal column
rib cage, ribcage
skull, cranium
adrenaline, epinephrine
noradrenaline, norepinephrine
thyroxine, T4
vitamin C, ascorbic acid
vitamin D, calciferol
vitamin A, retinol
vitamin B1, thiamine, thiamin
vitamin B2, riboflavin
blood sugar, blood glucose
blood sugar level, blood glucose level, blood glucose concentration
selective breeding, artificial selection
cold-blooded, ectothermic
plant-eater, plant eater, herbivore
meat-eater, meat eater, carnivore
apex predator, top predator
single-celled, unicellular, one-celled
many-celled, multicellular
enzyme-substrate complex, ES complex
heart attack, myocardial infarction
high blood pressure, hypertension
low blood pressure, hypotension
short-sighted, short sighted, myopic, myopia
long-sighted, long sighted, hyperopic
voluntary muscle, skeletal muscle
smooth muscle, involuntary muscle
grey matter, gray matter
sex-linked, X-linked
# chemistry
relative atomic mass, Ar
relative formula mass, relative molecular mass, Mr
atomic number, proton number
mass number, nucleon number
outer shell, valence shell, outermost shell
outer electron, outer shell electron, valence electron
halogens, group 7, group seven, group 17
alkali metals, group 1, group one
alkaline earth metals, group 2, group two
noble gases, group 0, group zero, group 8, group 18, inert gases
transition metal, transition element
ionic bond, electrovalent bond
giant covalent, macromolecular
van der Waals forces, London forces, dispersion forces
hydrogen bond, H-bond
delocalised electrons, free electrons, sea of electrons, mobile electrons
room temperature and pressure, RTP
standard temperature and pressure, STP
parts per million, ppm
thin-layer chromatography, thin layer chromatography, TLC
gas-liquid chromatography, GLC
gas chromatography, GC
nuclear magnetic resonance, NMR
infrared, infra-red, IR
ultraviolet, ultra-violet, UV
limewater, calcium hydroxide solution
quicklime, calcium oxide
slaked lime, calcium hydroxide
table salt, common salt, sodium chloride
caustic soda, sodium hydroxide
baking soda, bicarbonate of soda, sodium hydrogencarbonate, sodium bicarbonate
hydrogencarbonate, bicarbonate
sal ammoniac, ammonium chloride
acetic acid, ethanoic acid
formic acid, methanoic acid
acetone, propanone
ethanol, ethyl alcohol
ethene, ethylene
propene, propylene
ethyne, acetylene
polyethene, poly(ethene), polythene, polyethylene
polypropene, poly(propene), polypropylene
polychloroethene, poly(chloroethene), polyvinyl chloride, PVC
polytetrafluoroethene, PTFE
chlorofluorocarbon, CFC
laughing gas, nitrous oxide
fool's gold, iron pyrites, pyrite
heat of reaction, enthalpy change
activation energy, minimum energy to react, minimum energy needed to react
bond energy, bond enthalpy
gives out heat, exothermic, gives out energy, releases heat
takes in heat, endothermic, absorbs heat
oxidising agent, oxidant, electron acceptor
reducing agent, reductant, electron donor
proton donor, hydrogen ion donor
proton acceptor, hydrogen ion acceptor
hydroxonium ion, hydronium ion, oxonium ion
electron pair, pair of electrons
lone pair, non-bonding pair
crude oil, petroleum
liquefied petroleum gas, LPG
universal indicator, UI
# physics
kinetic energy, movement energy, KE, energy of motion
potential energy, PE
gravitational potential energy, GPE
elastic potential energy, EPE, strain energy
thermal energy, heat energy
alternating current, AC, a.c.
direct current, DC, d.c.
potential difference, PD, p.d., voltage
electromotive force, EMF, e.m.f.
light-dependent resistor, light dependent resistor, LDR
light-emitting diode, light emitting diode, LED
variable resistor, rheostat
electromagnetic, EM
electromagnetic spectrum, EM spectrum
electromagnetic radiation, EM radiation, electromagnetic waves
radio waves, radiowaves
X-rays, X rays
gamma ray, gamma radiation
specific heat capacity, SHC
specific latent heat, SLH
centre of mass, centre of gravity
turning effect, moment, turning force
resultant force, net force, overall force
air resistance, drag
friction, frictional force
terminal velocity, terminal speed
national grid, electricity grid
earth wire, ground wire
miniature circuit breaker, MCB
residual current device, RCD
hertz, Hz
critical angle, smallest angle for total internal reflection
total internal reflection, TIR
convex lens, converging lens
concave lens, diverging lens
red shift, redshift, red-shift
cosmic microwave background radiation, CMBR, CMB
big bang, Big Bang theory
light year, light-year
geostationary satellite, geostationary orbit satellite
half-life, half life
right angles, perpendicular, 90 degrees
count rate, counts per second
Geiger-Müller tube, GM tube, Geiger counter
# geography and geology
less economically developed country, LEDC, less developed country
more economically developed country, MEDC, more developed country
low income country, LIC
high income country, HIC
newly emerging economy, NEE
newly industrialised country, NIC
trans-national corporation, transnational corporation, TNC, multinational corporation, MNC, multinational
non-governmental organisation, non-government organisation, NGO
human development index, HDI
gross national income, GNI
gross national product, GNP
geographic information system, geographical information system, GIS
global positioning system, GPS
central business district, CBD
inter-tropical convergence zone, intertropical convergence zone, ITCZ
tectonic plate, lithospheric plate
plate boundary, plate margin
destructive boundary, convergent boundary, destructive margin, convergent margin
constructive boundary, divergent boundary, constructive margin, divergent margin
conservative boundary, transform boundary, conservative margin, transform margin
longshore drift, long-shore drift, littoral drift, LSD
freeze-thaw, freeze-thaw weathering, frost shattering, frost weathering
onion-skin weathering, exfoliation
sea stack, stack
ox-bow lake, oxbow lake
river bank, riverbank
drainage basin, catchment area, river basin
watershed, drainage divide
long profile, longitudinal profile
hydroelectric power, hydro-electric power, HEP
sand dune, dune
ageing population, aging population
# economics and business
gross domestic product, GDP
consumer price index, CPI
retail price index, RPI
value added tax, value-added tax, VAT
public limited company, PLC, plc
private limited company, Ltd
sole trader, sole proprietor
chief executive officer, CEO
human resources, HR, personnel
research and development, R&D
unique selling point, unique selling proposition, USP
return on capital employed, ROCE
average rate of return, ARR
net present value, NPV
small and medium-sized enterprise, small and medium enterprise, SME
just in time, just-in-time, JIT
total quality management, TQM
profit and loss account, income statement
balance sheet, statement of financial position
stock, inventory
turnover, sales revenue, revenue
break-even, break even, breakeven
price elasticity of demand, PED
price elasticity of supply, PES
income elasticity of demand, YED
cross elasticity of demand, XED
long run average cost, LRAC
marginal cost, MC
marginal revenue, MR
marginal social cost, MSC
marginal social benefit, MSB
foreign direct investment, FDI
quantitative easing, QE
International Monetary Fund, IMF
World Trade Organization, World Trade Organisation, WTO
European Union, EU
United Nations, UN
World Health Organization, World Health Organisation, WHO
national minimum wage, NMW
point of sale, POS
initial public offering, stock market flotation, IPO
# computing
random access memory, RAM
read-only memory, read only memory, ROM
central processing unit, CPU, processor
arithmetic logic unit, ALU
memory address register, MAR
memory data register, MDR, memory buffer register, MBR
current instruction register, CIR
graphics processing unit, GPU
hard disk drive, hard drive, HDD
solid state drive, solid-state drive, SSD
operating system, OS
local area network, LAN
wide area network, WAN
wireless local area network, WLAN
media access control address, MAC address
internet protocol, IP
transmission control protocol, TCP
hypertext transfer protocol, HTTP
hypertext transfer protocol secure, HTTPS
hypertext markup language, HTML
cascading style sheets, CSS
file transfer protocol, FTP
simple mail transfer protocol, SMTP
domain name system, domain name server, DNS
uniform resource locator, URL, web address
voice over internet protocol, VoIP
integrated development environment, IDE
graphical user interface, GUI
command line interface, CLI
application programming interface, API
structured query language, SQL
database management system, DBMS
distributed denial of service, DDoS
denial of service, DoS
least significant bit, LSB
most significant bit, MSB
American Standard Code for Information Interchange, ASCII
high-level language, high level language, HLL
low-level language, low level language, LLL
object-oriented programming, object oriented programming, OOP
binary digit, bit
denary, decimal, base 10, base ten
binary, base 2, base two
hexadecimal, hex, base 16, base sixteen
world wide web, WWW
artificial intelligence, AI
radio frequency identification, RFID
computer-aided design, computer aided design, CAD
computer-aided manufacture, computer aided manufacture, CAM
computer numerical control, CNC
main memory, primary storage, primary memory
backing store, secondary storage
# psychology
short-term memory, short term memory, STM
long-term memory, long term memory, LTM
working memory model, WMM
multi-store model, multi store model, MSM
eye-witness testimony, eyewitness testimony, EWT
cognitive behavioural therapy, CBT
obsessive compulsive disorder, obsessive-compulsive disorder, OCD
post-traumatic stress disorder, post traumatic stress disorder, PTSD
attention deficit hyperactivity disorder, ADHD
intelligence quotient, IQ
electroencephalogram, EEG
functional magnetic resonance imaging, fMRI
independent variable, IV
dependent variable, DV
fight or flight, fight-or-flight
unconditioned stimulus, UCS
unconditioned response, UCR
conditioned stimulus, CS
conditioned response, CR
monozygotic twins, identical twins, MZ twins
dizygotic twins, non-identical twins, fraternal twins, DZ twins
standard deviation, SD
# food and design
high-density polyethylene, HDPE
low-density polyethylene, LDPE
polyethylene terephthalate, PET
acrylonitrile butadiene styrene, ABS
medium-density fibreboard, medium density fibreboard, MDF
glass-reinforced plastic, glass reinforced plastic, GRP, fibreglass
carbon fibre reinforced polymer, CFRP
printed circuit board, PCB
acrylic, PMMA, perspex
carbohydrate, carbs
dietary fibre, non-starch polysaccharide, NSP, roughage
reference intake, RI
genetically modified food, GM food
modified atmosphere packaging, MAP
raising agent, leavening agent
quality control, QC
quality assurance, QA
British Standards Institution, BSI
life cycle assessment, life-cycle assessment, LCA
personal protective equipment, PPE
at right angles, perpendicular, at 90 degrees
program counter, PC
`
