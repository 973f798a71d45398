/**
 * Words that share a Porter stem and are different things in an exam.
 *
 * One group a line: slots with ", " between them, the forms of one word with "=" inside a slot, its base form first.
 * Two words of different slots never stand for each other, though their stems are equal. Every inflection that an
 * entry means is written out. A word with the same stem that stands in no slot goes with any of them.
 * A line that begins with "#" is a heading.
 */

export const keptApart = `
# biology
organ=organs, organism=organisms, organic=organically=organics, organise=organize=organisation=organization=organises=organised=organising=organisations
ovule=ovules, ovulate=ovulation=ovulates=ovulated=ovulating
animal=animals, animate=animation=animates=animated=animating=animations
predator=predators, predation, predate=predates=predated=predating
pollinator=pollinators, pollinate=pollination=pollinates=pollinated=pollinating
decomposer, decompose=decomposes=decomposed=decomposing
consumer=consumers, consume=consumes=consumed=consuming
producer=producers, produce=producible=produces=produced=producing
vertebrate=vertebrates, vertebral
secrete=secretion=secretory=secreted=secreting=secretes=secretions, secret=secretly=secretive=secrets
lactate=lactates=lactated=lactating, lactation
ruminant=ruminants, ruminate=rumination=ruminates=ruminated=ruminating=ruminations
mutual=mutually, mutualism=mutualistic
vegetable=vegetables, vegetation=vegetate=vegetates=vegetated=vegetating, vegetative=vegetatively
community=communities, communicate=communication=communicative=communicates=communicated=communicating=communications, communism, communal=communally, commune=communes=communed=communing
human=humans, humane=humanely, humanism
meninges, meningitis
larynges, laryngitis
append=appends=appended=appending, appendicitis
hepatic, hepatitis
enter=enters=entered=entering, enteritis, enteric
sinuses, sinusitis
tonsil=tonsils, tonsillitis
pancreatic, pancreatitis
lung=lungs, lunge=lunged=lunging=lunges
heroin=heroins, heroine=heroines
test=tests=tested=testing, testes
urine=urinate=urination=urinates=urinated=urinating, urinal=urinals
germinate=germination=germinates=germinated=germinating, germinal
respire=respiration=respires=respired=respiring, respirator=respirators
ventilate=ventilation=ventilates=ventilated=ventilating, ventilator=ventilators
incubate=incubation=incubates=incubated=incubating, incubator=incubators
fertiliser=fertilizer=fertilisers, fertilise=fertilize=fertilisation=fertilization=fertilises=fertilised=fertilising, fertile=fertility
immune=immunity, immunise=immunize=immunisation=immunization=immunises=immunised=immunising=immunisations
stimulant=stimulants, stimulate=stimulation=stimulates=stimulated=stimulating
dominant=dominance=dominants, dominate=domination=dominates=dominated=dominating
recess=recesses=recessed=recessing, recessive=recessives, recession=recessional=recessions=recessionals
active=activity=actively=actives=activities, activate=activation=activates=activated=activating, activator=activators, activism
adapt=adaptation=adaption=adaptive=adaptable=adaptability=adapts=adapted=adapting=adaptations=adaptions, adapter
conserve=conservation=conserves=conserved=conserving, conservative=conservatism=conservatives
dispersal, dispersion, dispersant
sever=severance=severed=severing=severs=severances, severe=severely=severity, several
palate=palatal=palates=palatals, palatable=palatability
envelop=envelopment=enveloped=enveloping=envelops, envelope=envelopes
habit=habitual=habits, habitable=habitation=habitations
captive=captivity=captives=captivities, captivate=captivation=captivates=captivated=captivating
ant=ants, ante=anted=antes
colony=colonies, colonial=colonialism=colonials
native=natives, nativity=nativities
domesticate=domestication=domesticates=domesticated=domesticating, domestic=domesticity=domestics
cultivate=cultivation=cultivates=cultivated=cultivating, cultivator=cultivators
regulate=regulation=regulatory=regulates=regulated=regulating=regulations, regulator=regulators
receptive=receptivity, reception=receptions
integral=integrally=integrals, integrate=integration=integrates=integrated=integrating, integrity
leaf=leaves=leafs=leafed=leafing, leave=leaving=leaved=leavings
dyed=dye=dyes=dyeing, dying
# chemistry
solute=solutes, solution=solutions
carbon=carbons, carbonate=carbonates=carbonating, carbonated=carbonation, carbonic, carbonise=carbonize=carbonises=carbonised=carbonising
nitrate=nitrates=nitrated=nitrating, nitration
nitrogen=nitrogenous, nitrogenate
hydrogen=hydrogenous, hydrogenate=hydrogenation=hydrogenates=hydrogenated=hydrogenating
oxide=oxides, oxidant=oxidants, oxidation=oxidative=oxidize
phosphor=phosphors, phosphoric, phosphorous
sulphate=sulfate=sulphates, sulphation
sulphur=sulfur=sulphurs=sulphured=sulphuring, sulphuric=sulfuric, sulphurous=sulfurous
chlorine, chlorinate=chlorination=chlorinates=chlorinated=chlorinating
fluoride=fluorides, fluoridate=fluoridation=fluoridates=fluoridated=fluoridating
acetic, acetate=acetates
amid, amide=amides
methane, methanal
ethane, ethanal
propane, propanal
butane, butanal
pentane, pentanal
hexane, hexanal
alkane, alkanal
ether, ethereal
hydrate=hydrates=hydrated=hydrating, hydration
filtrate=filtrates=filtrated=filtrating, filtration
condensate=condensates, condense=condensation=condenses=condensed=condensing=condensations, condenser=condensers
distillate=distillates, distil=distill=distillation=distils=distilled=distilling=distillations, distiller=distillery=distillers=distilleries
sublimate=sublimates=sublimated=sublimating, sublime=sublimation=sublimes=sublimed=subliming
evaporate=evaporation=evaporates=evaporated=evaporating, evaporator=evaporators
precipitate=precipitates=precipitated=precipitating, precipitation=precipitations, precipitous
electrolyte=electrolytes, electrolytic=electrolytically
electron=electrons, electronic=electronics=electronically
silicate=silicates, siliceous
silicon, silicone
arsenic, arsenal=arsenals
iron=irons=ironed=ironing, ironic=irony=ironically=ironies
chromate, chromatic=chromatically
tartar=tartars, tartaric
fraction=fractions, fractional=fractionally, fractionate=fractionation
residue=residues, residual=residuals
resident=residence=residential=residency=residents=residences=residencies, reside=resides=resided=residing
neutral=neutrality=neutrals, neutralise=neutralize=neutralisation=neutralization=neutralises=neutralised=neutralising
crystal=crystals, crystallise=crystallize=crystallisation=crystallization=crystallises=crystallised=crystallising
molar=molars, molarity
reactive=reactivity, reactivate=reactivation=reactivates=reactivated=reactivating
concentrate=concentration=concentrates=concentrated=concentrating=concentrations, concentric=concentrically
suspension=suspensions, suspense=suspenseful
inflammable=inflammability, inflammation=inflammatory=inflammations
emission=emissions, emissivity
disinfect=disinfection=disinfects=disinfected=disinfecting, disinfectant=disinfectants
catalyse=catalyses=catalysed=catalysing, catalyser
refrigerant=refrigerants, refrigerate=refrigeration=refrigerates=refrigerated=refrigerating, refrigerator=refrigerators
hydrolyse=hydrolyses=hydrolysed=hydrolysing, hydrolyser
period=periods, periodic=periodically=periodicity, periodical=periodicals
additive=additives, addition=additional=additionally=additions
separate=separation=separates=separated=separating=separations, separator=separators
polymer=polymeric=polymers, polymerise=polymerize=polymerisation=polymerization=polymerises=polymerised=polymerising
# physics
accelerate=acceleration=accelerates=accelerated=accelerating=accelerations, accelerator=accelerators
vibrate=vibration=vibrates=vibrated=vibrating=vibrations, vibrator=vibrators
oscillate=oscillation=oscillates=oscillated=oscillating=oscillations, oscillator=oscillators
radiate=radiation=radiates=radiated=radiating=radiations, radiator=radiators
conductance, conductivity, conduct=conduction=conductive=conducts=conducted=conducting
inductance, induction=inductive=inductions, induct=inducts=inducted=inducting
resistance=resistant=resist=resistances=resists=resisted=resisting, resistivity
generate=generation=generates=generated=generating=generations, generator=generators, general=generally=generality=generals=generalities, generic=generically=generics, generous=generously=generosity=generosities
transformer=transformers, transform=transformation=transforms=transformed=transforming=transformations
magnet=magnets, magnetic=magnetism=magnetically
electromagnet=electromagnets, electromagnetic=electromagnetism
orbit=orbital=orbits=orbited=orbiting, orbitals
alternate=alternation=alternately=alternates=alternated=alternating=alternations, alternator=alternators, alternative=alternatively=alternatives
commutator=commutators, commute=commuter=commutes=commuted=commuting=commuters, commutative=commutation=commutations
position=positional=positions=positioned=positioning, positive=positively=positivity=positives, posit=posits=posited=positing
direct=directly=directs=directed=directing, direction=directional=directions, directive=directives
relative=relatively=relatives, relativity
relate=relation=relationship=relates=related=relating=relations=relationships, relational
physics, physical=physically=physicals
engine=engines, engineer=engineers=engineered=engineering
centrifuge=centrifuges=centrifuged=centrifuging, centrifugal, centrifugation
impulse=impulses=impulsed=impulsing, impulsive=impulsively=impulsivity
impede=impedes=impeded=impeding, impedance
resultant=resultants, result=results=resulted=resulting
intense=intensity=intensely=intensities, intensive=intensively=intensives
inverse=inversely=inverses, inversion=inversions
propel=propels=propelled=propelling, propeller=propellers, propellant=propellants
elevate=elevation=elevates=elevated=elevating=elevations, elevator=elevators
universe=universes, universal=universally=universality=universals, university=universities
expansion=expansions, expanse=expanses, expansive
extension=extensions, extensive=extensively
exhaust=exhaustion=exhausts=exhausted=exhausting, exhaustive=exhaustively
amplify=amplifying=amplifies=amplified, amplifier=amplifiers
digit=digits, digital=digitally
wind=windy=winds=winded, winding
moment=moments, momentous
plastic=plastics, plasticity
temper=tempers=tempered=tempering, temperate, temperance
specific=specifically=specificity=specifics, specification=specifications
potent=potency, potentate=potentates
isolate=isolation=isolates=isolated=isolating, isolator
receive=receives=received=receiving, receiver=receivers
record=records=recorded=recording, recorder=recorders
# geography and geology
weather=weathers, weathering=weathered
sediment=sediments, sedimentation
equate=equation=equates=equated=equating=equations, equator=equators
desert=deserts=deserted=deserting, desertion=deserter=desertions=deserters
marine=marines, marinate=marination=marinates=marinated=marinating
insolation, insole=insoles, insolent=insolence
import=importation=importer=imports=imported=importing=importations=importers, important=importance=importantly
population=populate=populations=populates=populated=populating, populous, populism=populist=populists
urban, urbane=urbanity
experiment=experimental=experimentation=experiments=experimented=experimenting, experience=experiences=experienced=experiencing
forest=forests=forested=foresting, forestation
format=formats=formatted=formatting, formation=formations
bed=beds=bedded, bedding
line=lines=lined, lining=linings
season=seasonal=seasonally=seasons=seasoned, seasoning=seasonings
national=nationally=nation=nationals=nations, nationalism, nationality=nationalities, nationalise=nationalize=nationalisation=nationalization=nationalises=nationalised=nationalising=nationalisations
diverse=diversity=diversities, diversion=diversions
pastor=pastors, pastoral=pastoralism=pastorals
succession=successive=successively=successions, success=successful=successfully=successes
vertices, vertical=vertically=verticals
ice=ices=iced, icing=icings
mineral=minerals, miner=miners
news, new=newness
skies, ski=skis=skied=skiing
compass=compasses=compassed=compassing, compassion=compassionate
space=spaces=spaced, spacing
# economics and business
product=products, production=productions, productive=productivity=productively
market=markets=marketed, marketing, marketeer=marketeers
margin=margins, marginal=marginally=marginals
customer=customers, custom=customary=customs
account=accounts=accounted=accounting, accountant=accountancy=accountants, accountable=accountability
employer=employers, employ=employment=employs=employed=employing=employments, employable=employability
liquid=liquids, liquidity, liquidate=liquidation=liquidator=liquidates=liquidated=liquidating=liquidations=liquidators
competent=competence=competency=competences=competencies, compete=competes=competed=competing
goods, good
department=departmental=departments, depart=departs=departed=departing
publication=publications, publicity=publicise=publicises=publicised=publicising, public=publicly
executive=executives, execute=execution=executes=executed=executing=executions, executable
nominal=nominally, nominate=nomination=nominates=nominated=nominating=nominations
capital=capitals, capitalism, capitalise=capitalize=capitalises=capitalised=capitalising
consist=consists=consisted=consisting, consistent=consistency=consistently=consistencies
contest=contestant=contests=contested=contesting=contestants, contestable=contestability
install=installation=installs=installed=installing=installations, instalment=instalments
corporate=corporation=corporations, corporal=corporals, corporeal
industry=industrial=industrially=industries, industrious=industriously
responsible=responsibility=responsibly=responsibilities, response=responsive=responses
ration=rations=rationed=rationing, rational=rationally=rationality=rationals
develop=development=develops=developed=developing=developments, developer=developers
export=exports=exported=exporting, exporter=exporters
collect=collection=collects=collected=collecting=collections, collective=collectively=collectives
negligible=negligibly, negligent=negligence
initiative=initiatives, initiate=initiation=initiates=initiated=initiating=initiations, initial=initially=initials=initialled=initialling
reserve=reserves=reserved=reserving, reservation=reservations
object=objects=objected=objecting, objective=objectively=objectivity=objectives, objection=objectionable=objections
subject=subjects=subjected=subjecting, subjective=subjectively=subjectivity, subjection
aid=aided=aiding=aids, aide=aides
recreation=recreational=recreations, recreate=recreates=recreated=recreating
hospital=hospitals, hospitality=hospitable
rate=rates=rated, rating=ratings
fabric=fabrics, fabricate=fabrication=fabricates=fabricated=fabricating=fabrications
design=designs=designed=designing, designate=designation=designates=designated=designating=designations
stabiliser=stabilizer=stabilisers, stabilise=stabilize=stabilisation=stabilization=stabilises=stabilised=stabilising
exclusive=exclusively=exclusivity=exclusives, exclusion=exclusions
inflation=inflate=inflates=inflated=inflating, inflatable=inflatables
preserve=preservation=preserves=preserved=preserving, preservative=preservatives
# computing
computer=computers, compute=computation=computational=computes=computed=computing=computations
compiler=compilers, compile=compilation=compiles=compiled=compiling=compilations
assembler=assemblers, assemble=assembles=assembled=assembling, assembly=assemblies
interpreter=interpreters, interpret=interpretation=interprets=interpreted=interpreting=interpretations
translator=translators, translate=translation=translates=translated=translating=translations
accumulator=accumulators, accumulate=accumulation=accumulative=accumulates=accumulated=accumulating=accumulations
operator=operators, operate=operation=operational=operates=operated=operating=operations, operative=operatives
indicator=indicators, indicate=indication=indicates=indicated=indicating=indications, indices, indicative=indicatives
calculator=calculators, calculate=calculation=calculates=calculated=calculating=calculations
emulator=emulators, emulate=emulation=emulates=emulated=emulating=emulations
container=containers, contain=contains=contained=containing, containment
conditional=conditionally=conditionals, condition=conditions, conditioning=conditioned, conditioner=conditioners
validate=validation=validates=validated=validating=validations, valid=validity=validly
variable=variables, variability
module=modules, modulate=modulation=modulator=modulates=modulated=modulating=modulations=modulators
identical=identically, identity=identities
terminal=terminally=terminals, terminate=termination=terminates=terminated=terminating=terminations, terminator=terminators
present=presently=presents=presented=presenting, presentation=presenter=presentations=presenters
numerator=numerators, numeric=numerical=numerically, numerous, numeral=numerals, numerate=numeracy=numerates=numerated=numerating, numeration=numerations
multiple=multiples, multiplication=multiplicative=multiplications, multiplicity=multiplicities
derive=derivation=derives=derived=deriving=derivations, derivative=derivatives
differential=differentials, differentiate=differentiation=differentiates=differentiated=differentiating
factory=factories, factorial=factorials
route=routing=routed=routes, rout=routs
edition=editions, edit=edits=edited=editing
authority=authoritative=authorities, author=authors=authored=authoring
simulate=simulation=simulates=simulated=simulating=simulations, simulator=simulators
repeat=repeated=repeatedly=repeats=repeating, repeatable=repeatability
reproduce=reproduces=reproduced=reproducing, reproducible=reproducibility
represent=representation=represents=represented=representing=representations, representative=representatives
# psychology and history
personality=personalities, personal=personally=personals, person=persons
participant=participants, participate=participation=participates=participated=participating
concept=concepts, conception=conceptions
depressant=depressants, depress=depression=depresses=depressed=depressing=depressions, depressive=depressives
moral=morally=morality=morals=moralities, morale
critic=criticism=critics=criticisms, critical=critically=criticality
minor=minors=minored=minoring, minority=minorities
major=majors=majored=majoring, majority=majorities
empire=empires, empirical=empirically
dictator=dictators, dictate=dictation=dictates=dictated=dictating=dictations
reform=reforms=reformed=reforming, reformation=reformations
liberal=liberalism=liberals, liberate=liberation=liberates=liberated=liberating
polite=politely=politeness, politic=political=politics=politically
protest=protests=protested=protesting, protestant=protestants
opposite=oppositely=opposites, opposition=oppositions
effect=effects=effected=effecting, effective=effectively=effectiveness
respect=respects=respected=respecting, respectively=respective, respectable, respectful
social=socially=socials, socialism, socialise=socialize=socialisation=socialization=socialises=socialised=socialising
imperial=imperialism=imperials, imperious=imperiously
federal=federalism=federals, federate=federation=federates=federated=federating=federations
elect=election=elects=elected=electing=elections, elective=electives
deport=deportation=deports=deported=deporting=deportations, deportment
alien=aliens=aliened=aliening, alienate=alienation=alienates=alienated=alienating
converse=conversely=converses=conversed=conversing, conversation=conversational=conversations, conversion=conversions
definite=definitely, definition=definitions, definitive
memory=memories, memorial=memorials
alcohol=alcohols, alcoholism
photograph=photography=photographic=photographs=photographed=photographing, photographer=photographers
optimal=optimally, optimism
orient=orientation=orientate=orients=oriented=orienting=orientations=orientates=orientated=orientating, oriental=orientals
caste=castes, cast=casting=castings=casts
celebrate=celebration=celebrates=celebrated=celebrating=celebrations, celebrity=celebrities
rang, range=ranged=ranging=ranges
past=pasts, paste=pasted=pasting=pastes
born, borne
sing=singing=sings, singe=singed=singes
even=evenly=evens=evened, evening=evenings
unit=units, unite=united=uniting=unites
later, lateral=laterally=laterals=lateraled=lateraling
like=likes=liked=liking, likely
apart, apartment=apartments
process=processes=processed=processing, procession=processions=processioned=processioning
cloth=cloths, clothe=clothing=clothes=clothed
bath=baths, bathe=bathed=bathing=bathes
quit=quits=quitting, quite
suit=suited=suiting=suits, suite=suites
emergency=emergencies, emerge=emergence=emergent=emerges=emerged=emerging
transit=transits=transited=transiting, transition=transitional=transitions=transitioned=transitioning, transitive=transitives
candid, candidate=candidates
decimal=decimals, decimate=decimation=decimates=decimated=decimating
pure=purely, puree=purees=pureed=pureeing
bear=bears, bearing=bearings
fort=forts, forte=fortes
comprehension=comprehend=comprehensions=comprehends=comprehended=comprehending, comprehensive=comprehensively=comprehensives
intelligent=intelligence, intelligible
prescription=prescriptions, prescriptive
pi=pis=pied=piing, pies
literal=literally=literals, literate=literacy=literates
except=exception=excepts=excepted=excepting=exceptions, exceptional=exceptionally
# more, from the scan and from memory
affect=affects=affected=affecting, affection=affections
allow=allows=allowed=allowing, allowance=allowances
aspire=aspiration=aspires=aspired=aspiring=aspirations, aspirate=aspirates=aspirated=aspirating
assert=assertion=asserts=asserted=asserting=assertions, assertive
assign=assigns=assigned=assigning, assignment=assignments
assist=assistance=assists=assisted=assisting, assistant=assistants
aviator=aviators, aviation
behaviour=behavioural=behaviorist=behaviours, behaviourism
bromide=bromides, bromidic
calibrate=calibration=calibrates=calibrated=calibrating=calibrations, calibre=calibres
canon=canons, canonical
central=centrally=centrality=centrals, centralism
ceremony=ceremonies, ceremonious
circuit=circuits=circuited=circuiting, circuitous
classic=classical=classics, classicism
colloquial, colloquialism=colloquialisms
combat=combats=combated=combating, combatant=combatants
common=commonly=commons, commoner=commoners
companion=companions, companionable
compare=comparison=compares=compared=comparing=comparisons, comparable=comparability, comparative=comparatively=comparatives
complicate=complication=complicates=complicated=complicating=complications, complicity
confide=confides=confided=confiding, confident=confidence=confidently=confidences, confidant=confidants
congregate=congregation=congregates=congregated=congregating=congregations, congregant=congregants
connect=connection=connects=connected=connecting=connections, connective=connectives
conscript=conscripts=conscripted=conscripting, conscription
considerable=considerably, considerate=consideration=considerations
constitute=constitutes=constituted=constituting, constitution=constitutional=constitutions=constitutionals, constitutive
construct=construction=constructs=constructed=constructing=constructions, constructive=constructively
consult=consultation=consults=consulted=consulting=consultations, consultant=consultancy=consultants=consultancies
convention=conventions, conventional=conventionally, convent=convents
correspond=corresponding=correspondingly=corresponds=corresponded, correspondent=correspondence=correspondents=correspondences
covenant=covenants=covenanted=covenanting, coven=covens
decorate=decoration=decorates=decorated=decorating=decorations, decorator=decorators
defend=defends=defended=defending, defendant=defendants
denote=denotes=denoted=denoting, denotation=denotations
destine=destiny=destines=destined=destining=destinies, destination=destinations
determine=determination=determines=determined=determining=determinations, determinism, determinant=determinants
dialect=dialects, dialectic=dialectics
dilate=dilation=dilatation=dilates=dilated=dilating, dilator=dilators
diplomat=diplomats, diplomatic
discriminate=discrimination=discriminates=discriminated=discriminating, discriminant
divine=divinity=divines=divined=divining=divinities, divination
division=divisions, divisive=divisiveness, divisible=divisibility
duplicate=duplication=duplicates=duplicated=duplicating, duplicity
edible=edibles, edibility
emote=emotion=emotional=emotionally=emotes=emoted=emoting=emotions, emotive
encode=encodes=encoded=encoding, encoder=encoders
equitable=equitably, equitation
equal=equally=equality=equals=equalled=equalling, equalise=equalize=equalises=equalised=equalising
escalate=escalation=escalates=escalated=escalating=escalations, escalator=escalators
examine=examination=examines=examined=examining=examinations, examiner=examiners
excavate=excavation=excavates=excavated=excavating=excavations, excavator=excavators
exact=exactly=exacts=exacted=exacting, exaction
expect=expectation=expects=expected=expecting=expectations, expectant
express=expression=expresses=expressed=expressing=expressions, expressive=expressively
faction=factions, factional
final=finally=finals, finale=finales
figure=figures=figured=figuring, figurative=figuratively
fix=fixes=fixed=fixing, fixative=fixatives
flagellate=flagellates=flagellated=flagellating, flagellation
form=forms=formed=forming, formative
formal=formally=formality=formals=formalities, formalism
function=functional=functionally=functions=functioned=functioning, functionalism=functionalist=functionalists
future=futures, futurism
genetic=genetically, genetics
granule=granules, granulate=granulation=granulates=granulated=granulating
gravitate=gravitates=gravitated=gravitating, gravitation=gravitational
ignore=ignores=ignored=ignoring, ignorant=ignorance
impress=impression=impresses=impressed=impressing=impressions, impressive=impressively
individual=individually=individuals, individualism=individualist=individualists, individuality
inform=information=informative=informs=informed=informing, informal=informally=informality
innovate=innovation=innovates=innovated=innovating=innovations, innovator=innovators
inspire=inspiration=inspires=inspired=inspiring=inspirations, inspirational
institute=institutes=instituted=instituting, institution=institutional=institutions
instruct=instruction=instructs=instructed=instructing=instructions, instructive
instrument=instruments=instrumented=instrumenting, instrumental=instrumentally=instrumentals
insure=insurance=insures=insured=insuring=insurances, insurer=insurers
intern=internment=interned=interning=interns, internal=internally=internals, international=internationally=internationals
investigate=investigation=investigates=investigated=investigating=investigations, investigator=investigators
irritate=irritation=irritates=irritated=irritating=irritations, irritant=irritants, irritable=irritability
journal=journals, journalism
judicial, judicious
labour=labours=laboured=labouring, labourer=labourers
legislate=legislation=legislates=legislated=legislating, legislator=legislators
locate=location=locates=located=locating=locations, locator=locators
luxury=luxurious=luxuries, luxuriant
machine=machinery=machines=machined=machining, machinate=machinates=machinated=machinating
mechanic=mechanics=mechanical=mechanically, mechanism=mechanisms
mediate=mediation=mediates=mediated=mediating, mediator=mediators
medical=medically=medicals, medication=medicate=medications=medicates=medicated=medicating
method=methods, methodical=methodically
metric=metrics, metrical
minimal=minimally, minimalism=minimalist=minimalists
moderate=moderately=moderation=moderates=moderated=moderating, moderator=moderators
modern=moderns, modernism
monarch=monarchs, monarchic, monarchism
monotone=monotones, monotonic, monotonous=monotony
mountain=mountainous=mountains, mountaineer=mountaineering=mountaineers=mountaineered
narrate=narration=narrates=narrated=narrating=narrations, narrator=narrators
nature=natures, naturism
natural=naturally=naturals, naturalism
navigate=navigation=navigates=navigated=navigating, navigator=navigators
norm=norms, normative
observe=observation=observational=observes=observed=observing=observations, observant, observance=observances
occupation=occupational=occupations, occupant=occupants
office=offices, officer=officers
official=officially=officials, officiate=officiates=officiated=officiating
opportune, opportunity=opportunities, opportunism
origin=origins, original=originally=originality=originals, originate=originator=originates=originated=originating=originators
partial=partially=partials, partiality
perform=performance=performs=performed=performing=performances, performer=performers
permissive, permission=permissions, permissible
plural=plurals, pluralism
popular=popularly, popularity
practice=practise=practices=practises=practised=practising, practical=practically=practicality=practicals=practicalities, practicable
precede=precedes=preceded=preceding, precedent=precedents
privation=privations, private=privates, privatise=privatize=privatises=privatised=privatising
profit=profitable=profitability=profits=profited=profiting, profiteer=profiteers=profiteered=profiteering
progress=progression=progresses=progressed=progressing=progressions, progressive=progressively=progressives
promote=promotion=promotes=promoted=promoting=promotions, promoter=promoters
recite=recites=recited=reciting, recital=recitals
recruit=recruitment=recruits=recruited=recruiting, recruiter=recruiters
regress=regression=regresses=regressed=regressing=regressions, regressive
region=regional=regionally=regions, regionalism=regionalisms
renovate=renovates=renovated=renovating, renovator=renovators
resolve=resolves=resolved=resolving, resolver
resonate=resonance=resonant=resonates=resonated=resonating=resonances, resonator=resonators
retard=retards=retarded=retarding, retardant=retardants
revel=revelled=revelling=revels=revellings, revelation=revelations
reverse=reversible=reversibility=reversal=reverses=reversed=reversing=reversals, reversion=reversions
second=seconds=seconded=seconding, secondment=secondments
section=sectional=sections=sectioned=sectioning=sectionals, sectionalism
sentiment=sentiments, sentimental
signal=signals=signalled=signalling, signaller=signallers
situate=situates=situated=situating, situation=situations
solicit=solicits=solicited=soliciting, solicitous
special=specially=specials, speciality=specialities, specialism=specialisms
spiritual=spirituals, spiritualism, spirituous
structure=structural=structures=structured=structuring, structuralism
substantial=substantially, substantiate=substantiates=substantiated=substantiating
suggest=suggestion=suggests=suggested=suggesting=suggestions, suggestible=suggestibility, suggestive
suppress=suppression=suppresses=suppressed=suppressing, suppressant=suppressants
symbol=symbolic=symbols, symbolism
system=systems, systemic=systemically=systemics
telegraph=telegraphs=telegraphed=telegraphing, telegrapher=telegraphers
tort=torts, torte=tortes
tribune=tribunes, tribunal=tribunals
tuber=tubers, tuberous
use=used=using=usable=uses, useful=usefully=usefulness
vigil=vigils, vigilant
wreath=wreaths, wreathe=wreathed=wreathing=wreathes
proximity, proximal
ingenuity, ingenuous
# degrees and the quantity they are degrees of
hard=harder=hardest, hardness
`
