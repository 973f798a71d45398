export const opposites = `
# amount and size
increase, rise, raise, go up, get bigger, get higher, go higher, put up, push up, gain, climb, grow, more, higher, greater, bigger, larger, up >< decrease, fall, lower, drop, reduce, decline, go down, get smaller, get lower, go lower, push down, bring down, lose, shrink, fewer, less, smaller, down, cut
much, many, lots, plenty, a lot >< little, few, hardly any
high, tall >< low
big, large, great, huge >< small, little, tiny
most >< least, fewest
maximum, greatest, highest, largest, biggest, upper limit >< minimum, smallest, lowest, lower limit
long, longer >< short, shorter
wide, wider, broad >< narrow, narrower
thick, thicker >< thin, thinner
deep, deeper >< shallow, shallower
heavy, heavier >< light, lighter
dense, denser >< less dense
full >< empty
expand, get bigger, widen, stretch >< contract, narrow, compress, squeeze
surplus, excess >< shortage, deficit, lack
profit >< loss
majority >< minority
double >< halve
twice >< half
# speed and time
fast, faster, quick, quicker, rapid, quickly, speed up, accelerate >< slow, slower, slowly, slow down, decelerate
early, earlier >< late, later
before >< after
first, beginning, start, at first >< last, end, at the end
old, older >< new, newer
begin, start >< stop, finish, end
temporary >< permanent
frequent, often, common, always, usually >< rare, seldom, never, rarely
# strength and quality
strong, stronger, powerful >< weak, weaker, feeble
hard, difficult >< easy
hard, harder >< soft, softer
loud, louder >< quiet, quieter
bright, brighter >< dim, dimmer, dark
rough >< smooth
steep, steeper >< gentle, shallow, flat
good, better >< bad, worse
cheap, cheaper >< expensive, dear, dearer
rich >< poor
safe >< dangerous
same, equal, alike, identical >< different, unequal
similar >< dissimilar
simple >< complex, complicated
useful >< useless
# temperature and state
hot, hotter, warm, warmer >< cold, colder, cool, cooler
heat, heat up, warm up >< cool, cool down
melt, thaw >< freeze, solidify
evaporate, boil, vaporise >< condense
wet, damp, moist >< dry
dissolve >< crystallise, precipitate
exothermic >< endothermic
saturated >< unsaturated
~ solid, liquid, gas
# place and direction
up, upward, upwards, uphill >< down, downward, downwards, downhill
above, over >< below, under, beneath
into, enter, in, inside >< out of, leave, out, outside, exit
towards, closer, nearer, near, close together, close >< away from, further apart, further away, far, further, far apart
front, in front >< behind, back
left >< right
north >< south
east >< west
top, upper, surface >< bottom, lower
inner, internal >< outer, external
horizontal >< vertical
straight, straight on, straight down, straight up, square on, at right angles, perpendicular >< at an angle, diagonal, diagonally, oblique, obliquely, slanting
parallel >< perpendicular, at right angles
straight >< curved, bent, hooked
clockwise >< anticlockwise
landward, landwards, inland >< seaward, seawards
sheltered >< exposed
onshore >< offshore
upstream >< downstream
updrift >< downdrift
windward >< leeward
# force and charge
attract, pull >< repel, push
positive >< negative
gain electrons, reduction >< lose electrons, oxidation
absorb, take in >< emit, release, give out, give off
charge >< discharge
accept >< reject, refuse
! anode >< cathode
! acid, acidic >< alkali, alkaline
! metal >< non-metal
! conductor >< insulator
! transverse >< longitudinal
! reactant >< product
! series >< parallel
# making and breaking
build, build up, deposit, deposition, create >< erode, erosion, wear away, destroy
make, form, join, connect, link >< break, separate, split, cut off
open >< close, closed, shut
add >< remove, take away, subtract
multiply >< divide
lock >< unlock
help, support, aid >< hinder, hamper
allow, let, permit >< prevent, block, forbid
cause >< prevent
# protect and harm are not opposites of one scale
attack >< defend
! import >< export
! buy, purchase >< sell
borrow >< lend
save, saving >< spend, spending
earn >< spend
! input >< output
encrypt >< decrypt
encode >< decode
upload >< download
send >< receive
remember, recall >< forget
agree >< disagree
win >< lose
victory >< defeat
legal >< illegal
voluntary >< compulsory
direct >< indirect
active >< passive
constant, fixed, stay the same, unchanged >< change, changing, vary, variable
independent >< dependent
! public >< private
conscious >< unconscious
! primary >< secondary
internal >< external
! dominant >< recessive
concave >< convex
! aerobic >< anaerobic
domestic >< foreign
! male >< female
alive, living >< dead, non-living
true >< false
visible >< invisible
natural >< artificial
renewable >< non-renewable
! short-term >< long-term
! proactive >< retroactive
! primacy >< recency
elastic >< inelastic
! constructive >< destructive
! spring tide >< neap tide
`
