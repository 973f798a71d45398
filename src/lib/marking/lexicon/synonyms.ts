export const synonyms = `
carry, transport, move, take, bring, shift, push, shove
make, create, produce, form, generate, build
quick, fast, rapid, speedy
big, large, great
small, little, tiny
start, begin, commence
end, finish, stop, conclude
stop, prevent, block, hinder
let, allow, permit, enable
use up, consume
use, employ, apply, utilise
show, demonstrate, display, indicate
need, require
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
wear away, erode
drop, deposit, dump, lay down, leave behind
settle, sink
gather, collect, accumulate, build up, pile up
trap, catch, capture, hold, stop
reach, arrive at, get to, approach, come in to, hit
hit, strike, collide, bump into, bang into, crash
flow, run, move
find out, discover
work out, calculate
measure, find
look at, observe, watch, examine
record, write down, note
see, observe
choose, pick, select
think, believe
send, transmit
give off, give out, emit, release
take in, absorb
amount, quantity
amount, number
speed, rate
distance, length
edge, side, border
top, upper part
end, tip
ridge, bank
place, location, position, spot
direction, way
angle, slant
at an angle, diagonally, obliquely, slantwise, on a slant, slanting
straight down, straight back, shortest way
at right angles, perpendicular, square on
along, parallel to
beach, shore
coast, coastline, shoreline, shore
sea, ocean
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
firm, business, company
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
middle, centre
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
wrong, incorrect, false
clear, see-through, transparent
colourless, no colour, clear
dangerous, unsafe, hazardous
safe, secure
strong, powerful
weak, feeble
loud, noisy
pitch, note
heat, warm, warm up, heat up
cool, cool down
wash, rinse, clean
mix, stir, swirl
pour, tip
add, put in
fill, fill up
empty, pour out
shape, form
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
each other, one another
instead of, in place of, rather than
because of, due to, as a result of, caused by, owing to, thanks to
cause, lead to, result in, bring about, make
so that, in order to
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
method, way, procedure
idea, concept
use, purpose
kind, type, sort
shop, store
buy, purchase
sell, trade
pay, spend
borrow, take out a loan
owe, be in debt
save, put by
tax, duty
house, home
car, vehicle
ill, sick, unwell
illness, disease
die, be killed
kill, destroy
food, nutrients
eat, feed on
live, dwell
plant, vegetation
animal, creature
offspring, young, children
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
export const scienceSynonyms = `
short-term memory, STM
long-term memory, LTM
carbon dioxide, CO2
water, H2O
oxygen, O2
kinetic energy, movement energy
surface area, area of surface
equilibrium, balance
`
