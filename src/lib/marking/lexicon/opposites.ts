/**
 * Words and short phrases that exclude each other.
 *
 * "a, a2 >< b, b2": any member on the left against any on the right. Members are in base form, inflected by the code.
 * "~ a, b, c": a family, any two members of which exclude each other.
 * A leading "!" marks a line (or a family) whose members are opposites only where they describe the same thing in the same
 * slot of a statement: a sentence may name both an anode and a cathode. Lines without it are directions and polarities.
 * A leading "^" marks degrees and directions (more, faster, above): such a word belongs to the nearest thing beside it, and two of
 * them turned round are a reverse argument.
 * A line that begins with "#" is a heading.
 */

export const opposites = `
# directions and polarity
increase, rise, grow, go up, get bigger, get larger, climb, gain, raise >< decrease, fall, shrink, go down, get smaller, drop, decline, reduce, lower, lose
more >< less, fewer
most >< least, fewest
many, much, lots, plenty >< few, little
higher, high >< lower, low
highest >< lowest
faster, fast, quicker, quick, rapid >< slower, slow
speed up, accelerate >< slow down, decelerate
fastest, quickest >< slowest
gain >< lose
towards, toward, closer to >< away from, further from
into >< out of
inwards, inward >< outwards, outward
up, upwards, upward, uphill >< down, downwards, downward, downhill
upstream >< downstream
upslope >< downslope
onshore >< offshore
inland >< seaward, seawards
landward, landwards >< seaward, seawards
forwards, forward >< backwards, backward
expand, expansion >< contract, contraction
inflate, inflation >< deflate, deflation
stretch, extend >< compress, squash
lengthen >< shorten
widen, dilate, broaden >< narrow, constrict
vasodilation, vasodilate >< vasoconstriction, vasoconstrict
deepen >< shallow
thicken >< thin
strengthen >< weaken
heat, heat up, warm, warm up, get hotter >< cool, cool down, get colder
hot, hotter, hottest >< cold, colder, coldest
warm, warmer, warmest >< cool, cooler, coolest
strong, stronger, strongest >< weak, weaker, weakest
large, larger, big, bigger >< small, smaller, little
largest, biggest >< smallest
long, longer >< short, shorter
longest >< shortest
tall, taller >< short, shorter
thick, thicker >< thin, thinner
thickest >< thinnest
wide, wider, broad, broader >< narrow, narrower
widest >< narrowest
deep, deeper >< shallow, shallower
heaviest >< lightest
dense, denser >< sparse, sparser
more dense, denser >< less dense
steep, steeper >< gentle, gentler, flat, flatter
rough, rougher >< smooth, smoother
stiff, stiffer, rigid >< flexible, bendy
tight, tighter >< loose, looser
loud, louder >< quiet, quieter, soft, softer
bright, brighter >< dim, dimmer, dull
wet, wetter >< dry, drier
moist, damp, humid >< dry, arid
clean, cleaner >< dirty, dirtier
fresh >< stale
coarse, coarser >< fine, finer
near, nearer, close, closer >< far, further, farther, distant
nearest, closest >< furthest, farthest
early, earlier, earliest >< late, later, latest
before >< after
young, younger >< old, older
youngest >< oldest
new, newer >< old, older
cheap, cheaper, cheapest >< expensive, dear, dearer, costly
rich, richer, wealthy >< poor, poorer
above, over >< below, beneath, under, underneath
on top of >< underneath
inside >< outside
inner, innermost >< outer, outermost
internal >< external
north, northern, northward >< south, southern, southward
east, eastern, eastward >< west, western, westward
clockwise >< anticlockwise, counterclockwise
horizontal >< vertical
same, identical, equal >< different
equal >< unequal
similar >< different, dissimilar
constant, unchanged, steady >< changing, variable
stays the same, remains constant, does not change >< changes, varies
always >< never
all, every >< none
everyone, everybody >< nobody, no one
everything >< nothing
everywhere >< nowhere
often, frequently >< rarely, seldom
usually >< rarely
frequent >< rare, infrequent
common >< rare
present >< absent
presence >< absence
possible >< impossible
correct, right >< incorrect, wrong
maximum >< minimum
maximise >< minimise
attract, attraction >< repel, repulsion
absorb, absorption >< emit, emission, release, give out, give off
take in, take up >< give out, give off, release
push >< pull
open, opening >< closed, shut
switch on, turn on >< switch off, turn off
start, begin >< stop, end, finish
enter >< leave, exit
arrive >< leave, depart
join, connect, attach >< separate, disconnect, detach
combine, bind >< separate, split
build up, synthesise >< break down
form >< break
create, make >< destroy
construct, construction >< destroy, destruction, demolish
load >< unload
deposit, deposition >< erode, erosion
advance >< retreat
submerge, submergence >< emerge, emergence
melt >< freeze, solidify
evaporate, evaporation, boil, vaporise >< condense, condensation
dissolve >< precipitate, crystallise
soluble >< insoluble
miscible >< immiscible
saturated >< unsaturated
concentrated >< dilute
oxidising agent >< reducing agent
gain electrons, gain of electrons >< lose electrons, loss of electrons
exothermic >< endothermic
gives out heat, releases energy >< takes in heat, absorbs energy
acidic >< alkaline, basic
hydrate, hydrated >< dehydrate, dehydrated, anhydrous
polymerise >< depolymerise
ionise >< deionise
reversible >< irreversible
reactive >< unreactive, inert
stable >< unstable
organic >< inorganic
flammable >< non-flammable
magnetic >< non-magnetic
magnetise >< demagnetise
transparent >< opaque
renewable >< non-renewable, finite
biodegradable >< non-biodegradable
sustainable >< unsustainable
balanced >< unbalanced
converge, converging, convergent >< diverge, diverging, divergent
concave >< convex
in phase >< out of phase, in antiphase
upright >< inverted
magnified >< diminished
visible >< invisible
living, alive >< dead, non-living
aerobic >< anaerobic
with oxygen >< without oxygen
oxygenated >< deoxygenated
inhale, breathe in, inspiration >< exhale, breathe out, expiration
contract, contraction >< relax, relaxation
flex, bend >< extend, straighten
activate >< inhibit, deactivate, inactivate
stimulate >< inhibit
switched on, expressed >< switched off, repressed
turgid >< flaccid
hypertonic >< hypotonic
hydrophilic >< hydrophobic
selective >< non-selective
permeable, porous, pervious >< impermeable, impervious
innate, inherited >< learned, learnt, acquired
direct, directly >< indirect, indirectly
directly proportional >< inversely proportional
regular >< irregular
proactive >< retroactive
retrograde >< anterograde
temporary >< permanent
import, imports >< export, exports
buy, purchase >< sell
surplus >< shortage, deficit
surplus, excess >< deficiency, lack
appreciate, appreciation >< depreciate, depreciation, devalue
growth >< recession, decline
employed, employment >< unemployed, unemployment
skilled >< unskilled
lend >< borrow
inflow >< outflow
inject, injection >< withdraw, withdrawal, leakage
centralised >< decentralised
limited liability, limited >< unlimited liability, unlimited
elastic demand >< inelastic demand
expansionary >< contractionary
benefit >< harm
success >< failure
succeed >< fail
win >< lose
encourage, promote >< discourage, deter
allow, let, permit, enable >< prevent, stop, block, forbid
help, aid >< hinder, hamper
legal >< illegal
safe >< dangerous, unsafe
agree >< disagree
accept >< reject
include >< exclude
immigration, immigrate >< emigration, emigrate
populated >< unpopulated, uninhabited
densely populated >< sparsely populated
developed >< undeveloped, developing, less developed
high pressure >< low pressure
fertile >< infertile
afforestation >< deforestation
submarine >< subaerial
ductile >< brittle
malleable >< brittle
tough >< brittle
durable >< fragile
compile >< decompile
encrypt, encryption >< decrypt, decryption
encode, encoding >< decode, decoding
compress, compression >< decompress, decompression
upload >< download
online >< offline
volatile >< non-volatile
lossy >< lossless
in series >< in parallel
add, addition >< subtract, subtraction
multiply, multiplication >< divide, division
ascending >< descending
objective, objectively >< subjective, subjectively
reliable >< unreliable
valid >< invalid
accurate >< inaccurate
positive correlation >< negative correlation
positive reinforcement >< negative reinforcement
positive feedback >< negative feedback
healthy >< unhealthy
ripe >< unripe
cooked >< raw
healthy >< diseased
infected >< uninfected, healthy
immune >< susceptible
resistant >< susceptible
symmetrical >< asymmetrical
consolidated >< unconsolidated
sorted >< unsorted
rounded >< angular
# only of the same thing in the same place of a statement
! heavy, heavier >< light, lighter
! hard, harder >< soft, softer
! hard, harder, difficult >< easy, easier
! light, lighter >< dark, darker
! first >< last
! top >< bottom
! left >< right
! interior >< exterior
! front >< back
! parallel >< perpendicular, at right angles
! true >< false
! upper >< lower
! superior >< inferior
! absorb >< reflect
! fill >< empty
! full >< empty
! charge >< discharge
! deposit, deposition, drop >< transport, pick up
! sublime, sublimation >< deposition
! oxidise, oxidation, oxidised >< reduce, reduction, reduced
! pure >< impure
! conductor, conduct >< insulator, insulate
! elastic >< inelastic, plastic
! constructive >< destructive
! real >< virtual
! real >< imaginary
! natural >< artificial, man-made, synthetic
! biotic >< abiotic
! excite, excitatory >< inhibit, inhibitory
! dominant >< recessive
! homozygous >< heterozygous
! haploid >< diploid
! sexual >< asexual
! voluntary >< involuntary
! conscious >< unconscious, subconscious
! active >< passive
! dependent >< independent
! normal >< abnormal
! specific >< non-specific, general
! short-term >< long-term
! long term >< short term
! short run >< long run
! local >< global
! urban >< rural
! demand >< supply
! profit >< loss
! budget surplus >< budget deficit
! boom >< recession, slump
! lender >< borrower
! income, revenue >< expenditure, spending
! asset, assets >< liability, liabilities
! debtor >< creditor
! autocratic >< democratic
! private sector >< public sector
! progressive >< regressive
! fixed >< variable, flexible
! advantage, benefit, pro >< disadvantage, drawback, con
! ally, allies >< enemy, enemies
! war >< peace
! immigrant >< emigrant
! anticyclone >< depression
! windward >< leeward
! interglacial >< glacial
! read >< write
! push >< pop
! serial >< parallel
! synchronous >< asynchronous
! signed >< unsigned
! static >< dynamic
! sender >< receiver, recipient
! odd >< even
! quantitative >< qualitative
! positive, positively >< negative, negatively
! continuous >< discontinuous, discrete
! simple >< complex, complicated
! polar >< non-polar
! felsic >< mafic
! intrusive >< extrusive
! tension >< compression
! anode >< cathode
! cation >< anion
! cations >< anions
! proton, protons >< electron, electrons
! acid >< alkali, base
! metal >< non-metal, nonmetal
! element >< compound
! solute >< solvent
! reactant, reactants >< product, products
! input >< output
! cause >< effect
! primary coil >< secondary coil
! primary >< secondary
! step-up >< step-down
! alternating current, alternating >< direct current
! voltmeter >< ammeter
! crest, peak >< trough
! transverse >< longitudinal
! compression >< rarefaction
! reflection >< refraction
! fission >< fusion
! background >< foreground
! male, males >< female, females
! man >< woman
! mother >< father
! parent, parents >< offspring
! sperm >< egg
! stamen, anther >< carpel, stigma
! artery, arteries >< vein, veins
! atrium, atria >< ventricle, ventricles
! sympathetic >< parasympathetic
! sensory >< motor
! stimulus >< response
! agonist >< antagonist
! predator, predators >< prey
! host >< parasite
! producer, producers >< consumer, consumers
! herbivore >< carnivore
! prokaryotic, prokaryote >< eukaryotic, eukaryote
! plant cell >< animal cell
! genotype >< phenotype
! mitosis >< meiosis
! transcription >< translation
! photosynthesis >< respiration
! xylem >< phloem
! monocotyledon >< dicotyledon
! vertebrate, vertebrates >< invertebrate, invertebrates
! ectotherm >< endotherm
! insulin >< glucagon
! intraspecific >< interspecific
! monosaccharide >< polysaccharide
! summer >< winter
! day >< night
! dawn >< dusk
! sunrise >< sunset
! high tide >< low tide
! spring tide >< neap tide
! swash >< backwash
! headland >< bay
! oceanic >< continental
! source >< mouth
! weathering >< erosion
! push factor, push factors >< pull factor, pull factors
! origin, source >< destination
! birth rate >< death rate
! birth, births >< death, deaths
! buyer, buyers >< seller, sellers
! customer, customers >< supplier, suppliers
! employer, employers >< employee, employees
! landlord >< tenant
! goods >< services
! microeconomics >< macroeconomics
! fiscal >< monetary
! wholesaler >< retailer
! hardware >< software
! client >< server
! compiler >< interpreter
! public key >< private key
! stack >< queue
! independent variable >< dependent variable
! control group >< experimental group
! nature >< nurture
! introvert >< extrovert
! id >< superego
! classical conditioning >< operant conditioning
! reward >< punishment
! left wing, left-wing >< right wing, right-wing
! capitalism, capitalist >< communism, communist
! warp >< weft
! hardwood >< softwood
! thermoplastic, thermosoftening >< thermosetting, thermoset
! tensile >< compressive
! scalar >< vector
! object >< image
! near side >< far side
! longitude >< latitude
! syncline >< anticline
! footwall >< hanging wall
! normal fault >< reverse fault
! starboard >< port
! north pole >< south pole
! north-seeking >< south-seeking
! live wire >< neutral wire
! positive terminal >< negative terminal
! positive ion >< negative ion
! positive charge >< negative charge
! soluble fibre >< insoluble fibre
! macronutrient >< micronutrient
! use by >< best before
! hard water >< soft water
! saturated fat >< unsaturated fat
! exports >< imports
# families
~ increase, decrease, stay the same
~ positive, negative, neutral
~ attract, repel
~ acidic, neutral, alkaline
~ north, south, east, west
~ upper, middle, lower
~ upper course, middle course, lower course
~ always, sometimes, never
! ~ first, second, third, fourth, fifth
~ monday, tuesday, wednesday, thursday, friday, saturday, sunday
! ~ solid, liquid, gas
! ~ solids, liquids, gases
! ~ melting, freezing, boiling, condensing, subliming
! ~ proton, neutron, electron
! ~ ionic, covalent, metallic
! ~ ionic bond, covalent bond, metallic bond
! ~ single bond, double bond, triple bond
! ~ alkane, alkene, alkyne
! ~ conduction, convection, radiation
! ~ alpha, beta, gamma
! ~ series, parallel
! ~ red, orange, yellow, green, blue, indigo, violet
! ~ radio, microwave, infrared, ultraviolet, x-ray, gamma
! ~ current, voltage, resistance
! ~ mass, weight
! ~ speed, acceleration
! ~ artery, vein, capillary
! ~ arteries, veins, capillaries
! ~ sensory neurone, relay neurone, motor neurone
! ~ protein, carbohydrate, lipid
! ~ proteins, carbohydrates, lipids
! ~ amylase, protease, lipase
! ~ glucose, fructose, galactose
! ~ sucrose, lactose, maltose
! ~ adenine, thymine, cytosine, guanine
! ~ prophase, metaphase, anaphase, telophase, interphase
! ~ mutualism, parasitism, commensalism
! ~ herbivore, carnivore, omnivore
! ~ herbivores, carnivores, omnivores
! ~ primary consumer, secondary consumer, tertiary consumer
! ~ producer, consumer, decomposer
! ~ bacterium, virus, fungus, protist
! ~ igneous, sedimentary, metamorphic
! ~ crust, mantle, core
! ~ inner core, outer core, mantle, crust
! ~ sand, silt, clay
! ~ constructive, destructive, conservative
! ~ convergent, divergent, transform
! ~ physical weathering, chemical weathering, biological weathering
! ~ mechanical weathering, chemical weathering, biological weathering
! ~ abrasion, attrition, solution, hydraulic action
! ~ traction, saltation, suspension, solution
! ~ laminar, turbulent
! ~ spring, summer, autumn, winter
! ~ primary sector, secondary sector, tertiary sector, quaternary sector
! ~ monopoly, oligopoly, monopsony, duopoly
! ~ sole trader, partnership, private limited company, public limited company
! ~ fixed cost, variable cost
! ~ price elastic, price inelastic, unit elastic
! ~ autocratic, democratic, paternalistic, laissez-faire
! ~ mean, median, mode
! ~ bit, nibble, byte
! ~ kilobyte, megabyte, gigabyte, terabyte
! ~ ram, rom
! ~ sequence, selection, iteration
! ~ bubble sort, merge sort, insertion sort
! ~ linear search, binary search
! ~ lan, wan
! ~ integer, float, string, boolean
! ~ sensory register, short-term memory, long-term memory
! ~ episodic, semantic, procedural
! ~ id, ego, superego
! ~ compliance, identification, internalisation
! ~ repeated measures, independent groups, matched pairs
! ~ saturated, monounsaturated, polyunsaturated
! ~ tension, compression, torsion, shear
! ~ first-class lever, second-class lever, third-class lever
# one scale, however it is said: verbs, comparatives and the nouns of notes
^ increase, rise, raise, go up, get bigger, get higher, go higher, put up, push up, gain, climb, grow, more, higher, greater, bigger, larger, up >< decrease, fall, lower, drop, reduce, decline, go down, get smaller, get lower, go lower, push down, bring down, lose, shrink, fewer, less, smaller, down, cut
^ much, many, lots, plenty, a lot >< little, few, hardly any
^ high, tall >< low
^ big, large, great, huge >< small, little, tiny
^ maximum, greatest, highest, largest, biggest, upper limit >< minimum, smallest, lowest, lower limit
^ wide, wider, broad >< narrow, narrower
^ heavy, heavier >< light, lighter
^ long, longer >< short, shorter
^ thick, thicker >< thin, thinner
^ deep, deeper >< shallow, shallower
^ dense, denser >< less dense
^ full >< empty
^ expand, get bigger, widen, stretch >< contract, narrow, compress, squeeze
surplus, excess >< shortage, deficit, lack
profit >< loss
majority >< minority
^ double >< halve
^ twice >< half
^ fast, faster, quick, quicker, rapid, quickly, speed up, accelerate >< slow, slower, slowly, slow down, decelerate
^ early, earlier >< late, later
^ first, beginning, start, at first >< last, end, at the end
^ old, older >< new, newer
^ begin, start >< stop, finish, end
^ frequent, often, common, always, usually >< rare, seldom, never, rarely
^ strong, stronger, powerful >< weak, weaker, feeble
^ hard, difficult >< easy
^ hard, harder >< soft, softer
^ loud, louder >< quiet, quieter
^ bright, brighter >< dim, dimmer, dark
^ rough >< smooth
^ steep, steeper >< gentle, shallow, flat
^ good, better >< bad, worse
^ cheap, cheaper >< expensive, dear, dearer
rich >< poor
safe >< dangerous
^ same, equal, alike, identical >< different, unequal
^ similar >< dissimilar
simple >< complex, complicated
useful >< useless
^ hot, hotter, warm, warmer >< cold, colder, cool, cooler
^ heat, heat up, warm up >< cool, cool down
melt, thaw >< freeze, solidify
evaporate, boil, vaporise >< condense
^ wet, damp, moist >< dry
dissolve >< crystallise, precipitate
~ solid, liquid, gas
^ up, upward, upwards, uphill >< down, downward, downwards, downhill
^ above, over >< below, under, beneath
^ into, enter, in, inside >< out of, leave, out, outside, exit
^ towards, to, back to, closer, nearer, near, close together, close >< away from, further apart, further away, far, further, far apart
^ front, in front >< behind, back
^ left >< right
^ north >< south
^ east >< west
^ top, upper, surface >< bottom, lower
^ inner, internal >< outer, external
^ straight down, straight back down >< straight up, straight back up
^ straight on, square on, at right angles, perpendicular >< at an angle, diagonal, diagonally, oblique, obliquely, slanting
^ straight down, straight back >< at an angle, diagonally, obliquely, slanting
! straight >< at an angle, diagonal, diagonally, oblique, obliquely, slanting
^ parallel >< perpendicular, at right angles
^ straight >< curved, bent, hooked
^ clockwise >< anticlockwise
^ landward, landwards, inland >< seaward, seawards
^ sheltered >< exposed
^ updrift >< downdrift
^ windward >< leeward
attract, pull >< repel, push
positive >< negative
gain electrons, reduction >< lose electrons, oxidation
absorb, take in >< emit, release, give out, give off
charge >< discharge
accept >< reject, refuse
! acid, acidic >< alkali, alkaline
! metal >< non-metal
! conductor >< insulator
! reactant >< product
! series >< parallel
build, build up, deposit, deposition, create >< erode, erosion, wear away, destroy
make, form, join, connect, link >< break, separate, split, cut off
open >< close, closed, shut
add >< remove, take away, subtract
multiply >< divide
lock >< unlock
help, support, aid >< hinder, hamper
allow, let, permit >< prevent, block, forbid
cause >< prevent
attack >< defend
! import >< export
! buy, purchase >< sell
borrow >< lend
save, saving >< spend, spending
earn >< spend
encrypt >< decrypt
encode >< decode
send >< receive
remember, recall >< forget
victory >< defeat
voluntary >< compulsory
direct >< indirect
active >< passive
constant, fixed, stay the same, unchanged >< change, changing, vary, variable
independent >< dependent
! public >< private
conscious >< unconscious
! aerobic >< anaerobic
domestic >< foreign
! male >< female
alive, living >< dead, non-living
true >< false
natural >< artificial
renewable >< non-renewable
! proactive >< retroactive
! primacy >< recency
elastic >< inelastic
keep, retain, hold >< lose
`
