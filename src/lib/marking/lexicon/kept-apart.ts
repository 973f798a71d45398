export const keptApart = `
# biology
organ, organism, organic=organically, organise=organize=organisation=organization
ovule, ovulate=ovulation
animal, animate=animation
predator, predation, predate
pollinator, pollinate=pollination
decomposer, decompose
consumer, consume
producer, produce=producible
vertebrate, vertebral
secrete=secretion=secretory=secreted=secreting, secret=secretly=secretive
transcript, transcription
lactate, lactation
ruminant, ruminate=rumination
mutual=mutually, mutualism=mutualistic
vegetable, vegetation=vegetate, vegetative=vegetatively
community=communities, communicate=communication=communicative, communism, communal=communally, commune
human, humane=humanely, humanism
meninges, meningitis
larynges, laryngitis
append, appendicitis
hepatic, hepatitis
enter, enteritis, enteric
sinuses, sinusitis
tonsil, tonsillitis
pancreatic, pancreatitis
lung, lunge=lunged=lunging
heroin, heroine
test, testes
urine=urinate=urination, urinal
germinate=germination, germinal
respire=respiration, respirator
ventilate=ventilation, ventilator
incubate=incubation, incubator
fertiliser=fertilizer, fertilise=fertilize=fertilisation=fertilization, fertile=fertility
immune=immunity, immunise=immunize=immunisation=immunization
stimulant, stimulate=stimulation
dominant=dominance, dominate=domination
recess, recessive, recession=recessional
active=activity=actively, activate=activation, activator, activism
adapt=adaptation=adaption=adaptive=adaptable=adaptability, adapter
conserve=conservation, conservative=conservatism
dispersal, dispersion, dispersant
sever=severance=severed=severing, severe=severely=severity, several
palate=palatal, palatable=palatability
envelop=envelopment=enveloped=enveloping, envelope
habit=habitual, habitable=habitation
captive=captivity, captivate=captivation
ant, ante=anted
cancer=cancerous, canker
pupa, pupate
taxa, tax
sperm, spermicide
copulate=copulation, copula
antigen=antigenic, antigone
spore, sporadic
colony, colonial=colonialism
native, nativity
domesticate=domestication, domestic=domesticity
cultivate=cultivation, cultivator
regulate=regulation=regulatory, regulator
receptive=receptivity, reception
integral=integrally, integrate=integration, integrity
vaccine, vaccinia
anaerobe, aerobe
symbiont, symbiotic
coral, choral
insulate=insulation, insular
leaf=leaves, leave=leaving
dyed=dye, dying
# chemistry
solute, solution
carbon, carbonate, carbonated=carbonation, carbonic, carbonise=carbonize
nitrate, nitration
nitrogen=nitrogenous, nitrogenate
hydrogen=hydrogenous, hydrogenate=hydrogenation
oxide, oxidant, oxidation=oxidative=oxidize
phosphate, phosphor, phosphoric, phosphorous, phosphorus
sulphate=sulfate, sulphation
sulphur=sulfur, sulphuric=sulfuric, sulphurous=sulfurous
chlorine, chlorinate=chlorination
fluoride, fluoridate=fluoridation
acetic, acetate, acetone
amid, amide
methane, methanal
ethane, ethanal
propane, propanal
butane, butanal
pentane, pentanal
hexane, hexanal
alkane, alkanal
ether, ethereal
hydrate, hydration
filtrate, filtration
condensate, condense=condensation, condenser
distillate, distil=distill=distillation, distiller=distillery
sublimate, sublime=sublimation
evaporate=evaporation, evaporator
precipitate, precipitation, precipitous
electrolyte, electrolytic=electrolytically
electron, electronic=electronics=electronically
silicate, siliceous
silicon, silicone
arsenic, arsenal
iron, ironic=irony=ironically
chromate, chromatic=chromatically
dichromate, dichromatic
tartar, tartaric
fraction, fractional=fractionally, fractionate=fractionation
residue, residual
resident=residence=residential=residency, reside
neutral=neutrality, neutralise=neutralize=neutralisation=neutralization
crystal, crystallise=crystallize=crystallisation=crystallization
molar, molarity
reactive=reactivity, reactivate=reactivation
valence=valency, valent
concentrate=concentration, concentric=concentrically
saturate=saturation, satire
suspension, suspense=suspenseful
inflammable=inflammability, inflammation=inflammatory
emission, emissivity
disinfect=disinfection, disinfectant
catalyse, catalyser
refrigerant, refrigerate=refrigeration, refrigerator
hydrolyse, hydrolyser
period, periodic=periodically=periodicity, periodical
metal=metallic, metallise
additive, addition=additional=additionally
separate=separation, separator
polymer=polymeric, polymerise=polymerize=polymerisation=polymerization
# physics
accelerate=acceleration, accelerator
vibrate=vibration, vibrator
oscillate=oscillation, oscillator
radiate=radiation, radiator
conductance, conductivity, conduct=conduction=conductive, conducive
inductance, induction=inductive, induct
resistance=resistant=resist, resistivity
generate=generation, generator, general=generally=generality, generic=generically, generous=generously=generosity
transformer, transform=transformation
magnet, magnetic=magnetism=magnetically
electromagnet, electromagnetic=electromagnetism
orbit=orbital, orbitals
alternate=alternation=alternately, alternator, alternative=alternatively
commutator, commute=commuter, commutative=commutation
position=positional, positive=positively=positivity, posit
direct=directly, direction=directional, directive, director=directorate
relative=relatively, relativity
relate=relation=relationship, relational
physics, physical=physically
engine, engineer
centrifuge, centrifugal, centrifugation
impulse, impulsive=impulsively=impulsivity
impede, impedance
resultant, result
intense=intensity=intensely, intensive=intensively
inverse=inversely, inversion
propel, propeller, propellant
elevate=elevation, elevator
universe, universal=universally=universality, university
expansion, expanse, expansive
extension, extensive=extensively
exhaust=exhaustion, exhaustive=exhaustively
amplify, amplifier
digit, digital=digitally
wind=windy, winding
moment, momentous
plastic, plasticity
laminar, laminate
projector, project
temper, temperate, temperance
specific=specifically=specificity, specification
potent=potency, potentate
isolate=isolation, isolator
receive, receiver
record, recorder
# geography and geology
weather, weathering=weathered
sediment, sedimentation
equate=equation, equator
desert, desertion=deserter
marine, marinate=marination
insolation, insole, insolent=insolence
import=importation=importer, important=importance=importantly
population=populate, populous, populism=populist
urban, urbane=urbanity
experiment=experimental=experimentation, experience
forest, forestation
format, formation
bed, bedding
line, lining
season=seasonal=seasonally, seasoning
national=nationally=nation, nationalism, nationality, nationalise=nationalize=nationalisation=nationalization
diverse=diversity, diversion
pastor, pastoral=pastoralism
succession=successive=successively, success=successful=successfully
vertices, vertical=vertically
tropic=tropics, tropism
erode=erosion, erotic
province, provincial
ice=ices, icing
mean, meander
mineral, miner
news, new=newness
skies, ski
compass, compassion=compassionate
space, spacing
human, humus
drift, drifter
climate=climatic, climax
# economics and business
product, production, productive=productivity=productively
market, marketing, marketeer
margin, marginal=marginally
customer, custom=customary
account, accountant=accountancy, accountable=accountability
employer, employ=employment, employable=employability
liquid, liquidity, liquidate=liquidation=liquidator
competent=competence=competency, compete
goods, good
department=departmental, depart
publication, publicity=publicise, public=publicly
executive, execute=execution, executable
nominal=nominally, nominate=nomination
capital, capitalism, capitalise=capitalize
consist, consistent=consistency=consistently
contest=contestant, contestable=contestability
install=installation, instalment
commission, commissioner
corporate=corporation, corporal, corporeal
industry=industrial=industrially, industrious=industriously
responsible=responsibility=responsibly, response=responsive
ration, rational=rationally=rationality
develop=development, developer
invest=investment, investor
export, exporter
collect=collection, collective=collectively
negligible=negligibly, negligent=negligence
initiative, initiate=initiation, initial=initially
reserve, reservation
object, objective=objectively=objectivity, objection=objectionable
subject, subjective=subjectively=subjectivity, subjection
aid=aided=aiding, aide
sale, salesman
arbitrate=arbitration, arbitrary
recreation=recreational, recreate
hospital, hospitality=hospitable
franc, frank
rate, rating
fabric, fabricate=fabrication
design, designate=designation
stabiliser=stabilizer, stabilise=stabilize=stabilisation=stabilization
exclusive=exclusively=exclusivity, exclusion
inflation=inflate, inflatable
preserve=preservation, preservative
serve, servile
# computing
computer, compute=computation=computational
compiler, compile=compilation
assembler, assemble, assembly
interpreter, interpret=interpretation
translator, translate=translation
accumulator, accumulate=accumulation=accumulative
operator, operate=operation=operational, operative
indicator, indicate=indication, indices, indicative
calculator, calculate=calculation
emulator, emulate=emulation
container, contain, containment
conditional=conditionally, condition, conditioning=conditioned, conditioner
validate=validation, valid=validity=validly
variable, variability
module, modulate=modulation=modulator
identical=identically, identity
terminal=terminally, terminate=termination, terminator
present=presently, presentation=presenter
numerator, numeric=numerical=numerically, numerous, numeral, numerate=numeracy, numeration
multiple, multiplication=multiplicative, multiplicity
derive=derivation, derivative
differential, differentiate=differentiation
factory, factorial
route=routing=routed=routes, rout
editor, edition, edit
authority=authoritative, author
simulate=simulation, simulator
repeat=repeated=repeatedly, repeatable=repeatability
reproduce, reproducible=reproducibility
represent=representation, representative
logic=logical=logically, logistic
character, characteristic
execute, executor
relay, relaid
parity, parish
# psychology and history
personality, personal=personally, person
participant, participate=participation
concept, conception
depressant, depress=depression, depressive
experience, experiential
moral=morally=morality, morale
critic=criticism, critical=critically=criticality
minor, minority
major, majority
empire, empirical=empirically
dictator, dictate=dictation
reform, reformation
liberal=liberalism, liberate=liberation
polite=politely=politeness, politic=political=politics=politically
protest, protestant
oppose, opposite
opposite=oppositely, opposition
effect, effective=effectively=effectiveness
respect, respectively=respective, respectable, respectful
social=socially, socialism, socialise=socialize=socialisation=socialization
imperial=imperialism, imperious=imperiously
federal=federalism, federate=federation
elect=election, elective
deport=deportation, deportment
alien, alienate=alienation
commend, commander
converse=conversely, conversation=conversational, conversion
definite=definitely, definition, definitive
memory, memorial
alcohol, alcoholism
photograph=photography=photographic, photographer
optimal=optimally, optimism
orient=orientation=orientate, oriental
doctor, doctrine
secretary, secret
caste, cast=casting=castings
relevant=relevance, relieve
celebrate=celebration, celebrity
rang, range=ranged=ranging
past, paste=pasted=pasting
born, borne
sing=singing, singe=singed
even=evenly, evening
unit, unite=united=uniting
late=lately, lateral
later, lateral=laterally
like, likely
apart, apartment
process, procession
cloth, clothe=clothing=clothes=clothed
bath, bathe=bathed=bathing
quit, quite
suit=suited=suiting, suite
emergency, emerge=emergence=emergent
transit, transition=transitional, transitive
candid, candidate
decimal, decimate=decimation
grave, gravity
pure=purely, puree
bear, bearing
hard, hardly
short, shortly
port, portion
fort, forte=fortes
comprehension=comprehend, comprehensive=comprehensively
intelligent=intelligence, intelligible
prescription, prescriptive
pi, pies
literal=literally, literate=literacy
tender, tendency
opera, operatic
except=exception, exceptional=exceptionally
# more, from the scan and from memory
even=evenness, event
administer, administrator
affect, affection
allow, allowance
ambulance, ambulatory
aspire=aspiration, aspirate
assert=assertion, assertive
assign, assignment
base=bases, basement
assist=assistance, assistant
aviator, aviation
barb, barbel
behave, behaviourism
behaviour=behavioural=behaviorist, behaviourism
bromide, bromidic
cap=capped=capping, cape=caped
calibrate=calibration, calibre
canal, canalise
canon, canonical
central=centrally=centrality, centralism
ceremony, ceremonious
circuit, circuitous
classic=classical, classicism
collate=collation, collateral
colloquial, colloquialism
combat, combatant
common=commonly, commoner
compact=compaction, compactor
companion, companionable
compare=comparison, comparable=comparability, comparative=comparatively
complicate=complication, complicity
confide, confident=confidence=confidently, confidant
congregate=congregation, congregant
connect=connection, connective
conscript, conscription
considerable=considerably, considerate=consideration
console=consolation, consul
constitute, constitution=constitutional, constitutive
construct=construction, constructive=constructively
consult=consultation, consultant=consultancy
convention, conventional=conventionally, convent
correspond=corresponding=correspondingly, correspondent=correspondence
covenant, coven
credible=credibility, credit, creditor
decorate=decoration, decorator
defend, defendant
denote, denotation
destine=destiny, destination
determine=determination, determinism, determinant
dialect, dialectic
diligent, dilate
dilate=dilation=dilatation, dilator
diplomat, diplomatic
discriminate=discrimination, discriminant
divine=divinity, divination
division, divisive=divisiveness, divisible=divisibility
duplicate=duplication, duplicity
edible, edibility
emote=emotion=emotional=emotionally, emotive
encode, encoder
episcopal, episode
equitable=equitably, equitation
equal=equally=equality, equalise=equalize
escalate=escalation, escalator
examine=examination, examiner
excavate=excavation, excavator
exact=exactly, exaction
expect=expectation, expectant
express=expression, expressive=expressively
extract=extraction, extractor
faction, factional
final=finally, finale, finalise
finance, financier
figure, figurative=figuratively
fix, fixative
flagellate, flagellation
form, formative
formal=formally=formality, formalism
function=functional=functionally, functionalism=functionalist
future, futurism
genetic=genetically, genetics
granule, granulate=granulation
gravitate, gravitation=gravitational
guard, guardian
hallucinogen, hallucinate
harmony, harmonic=harmonics
idol, ideal
ignore, ignorant=ignorance
imagine=imagination=imaginative, imaginary
impress=impression, impressive=impressively
individual=individually, individualism=individualist, individuality
inform=information=informative, informal=informally=informality
inject=injection, injector
innovate=innovation, innovator
inspect, inspector
inspire=inspiration, inspirational
institute, institution=institutional
instruct=instruction, instructive, instructor
instrument, instrumental=instrumentally
insure=insurance, insurer
intend, intent
intern=internment=interned=interning, internal=internally, international=internationally
invent=invention=inventive, inventory, inventor
investigate=investigation, investigator
irritate=irritation, irritant, irritable=irritability
journal, journalism
judicial, judicious
juror, jury
labour, labourer
lamina=laminae, laminate=lamination
legislate=legislation, legislator, legislature
lever, leverage
literary, literate
locate=location, locator
luxury=luxurious, luxuriant
machine=machinery, machinate
mechanic=mechanics=mechanical=mechanically, mechanism
mediate=mediation, mediator
medical=medically, medication=medicate
merge, merger
method, methodical=methodically
metric=metrics, metrical
migrate=migration, migrant
militant, military
minimal=minimally, minimalism=minimalist
moderate=moderately=moderation, moderator
modern, modernism
monarch, monarchic, monarchism
monotone, monotonic, monotonous=monotony
motivate=motivation=motive, motif
mountain=mountainous, mountaineer=mountaineering
narrate=narration, narrator
nature, naturism
natural=naturally, naturalism
navigate=navigation, navigator
norm, normative
note, notary
notable=notably, note
numb, number
observe=observation=observational, observant, observance
occupy=occupied, occupation=occupational, occupant
office, officer
official=officially, officiate
opportune, opportunity, opportunism
organist, organic
origin, original=originally=originality, originate=originator
paint, painter
partial=partially, partiality
passion=passionate, passive=passively=passivity
perform=performance, performer
permissive, permission, permissible
persona, person
physiologist, physiology
plural, pluralism
popular=popularly, popularity
practice=practise, practical=practically=practicality, practicable
precede, precedent
presume, presumptive
privation, private, privatise=privatize
probable=probably=probability, probate=probation
productivity, producer
profit=profitable=profitability, profiteer
progress=progression, progressive=progressively
promote=promotion, promoter
proportion, proportionate
prosecute=prosecution, prosecutor
provoke, provocative
psyche, psychic
punctual, punctuate
radical, radicle
react, reactant
reaction, reactionary
realist=realism, real=really=reality
reception, receptacle
recite, recital
recruit=recruitment, recruiter
refer, referendum
refine, refinery
refuse=refusal, refute
regress=regression, regressive
region=regional=regionally, regionalism
rehabilitate=rehabilitation, habilitate
reliable, reliant
renovate, renovator
resolve, resolver
resonate=resonance=resonant, resonator
retard, retardant
retire, retiree
revel=revelled=revelling, revelation
reverse=reversible=reversibility=reversal, reversion
revolution, revolutionary
romantic, romanticism
sample, sampler
sanitary, sanitation
scripture, script
second, secondment
section=sectional, sectionalism
sense, sensation
sentiment, sentimental
serial, serialise
signal, signaller
simple, simplistic
situate, situation
solicit, solicitor, solicitous
special=specially, speciality, specialism, specialise
spectate=spectator, spectacle
spirit, spiritual, spiritualism, spirituous
stimulus, stimulate
strategy, strategic
structure=structural, structuralism
sublime, subliminal
subsidence=subside, subsidy
substantial=substantially, substantiate
suggest=suggestion, suggestible=suggestibility, suggestive
suppress=suppression, suppressant, suppressor
survey, surveyor
syllabic, syllable
symbol=symbolic, symbolism
symmetric, symmetry
system=systems, systemic=systemically, systematic
taste, taster
telegraph, telegrapher
testament, testate
theatre, theatrical
torture, tort, torte
total, totalitarian
tribune, tribunal
triumph, triumvir
tuber, tuberous, tuberculosis
use=used=using=usable, useful=usefully=usefulness
valley, value
vibrant, vibrate
vigil, vigilant
virtue, virtual
vision, visionary
vocal, vocation
volunteer, voluntary
weld, welder
whole, wholesome
wreath, wreathe=wreathed=wreathing

proximity, proximal
ingenuity, ingenuous
`
