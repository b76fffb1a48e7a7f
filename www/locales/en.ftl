### English. Ids name what they say; the core names ids and arguments, never sentences.

## Problems with an entry. $found is what stands there, $example and $accepted what would do.

problem-missing = Needed here, for example { $example }.
problem-not-a-number = No figure at place { $at }: “{ $found }”. Write it as { $example }.
problem-division-by-zero = A fraction cannot have 0 below the line.
problem-ambiguous-number = “{ $found }” can be { $decimal } or { $thousands }. Write the one you mean.
point-is-decimal = “{ $found }” is read with a decimal point, as { $decimal }.
problem-not-finite = Too large to be a figure.
problem-unit-missing = Add the unit: { $accepted }.
problem-unknown-unit = “{ $found }” is no unit known here. These are: { $accepted }.
problem-other-quantity = That is { $found }; here goes { $quantity }, in { $accepted }.
problem-parts-out-of-order = The larger part comes first, as in { $example }.
problem-out-of-range = Beyond anything on a job: from { $low } to { $high }.
problem-not-a-choice = “{ $found }” is not one of { $accepted }.
problem-wrong-type = This must be a figure or a text, such as { $example }.
problem-outside-validity = Outside what the method holds for: from { $low } to { $high }.
problem-not-in-table = Not in the table, which has: { $accepted }.
problem-conflict = Contradicts “{ $with }”. Leave one of the two empty.
problem-impossible = Cannot be, together with “{ $with }”.
problem-unknown-field = There is no such field. { $accepted }
problem-not-an-object = This must be an object with named fields.
problem-not-a-list = This must be a list.
problem-too-few = { $needed } are needed here; there are { $found }.
problem-too-many = { $found } are more than the { $most } that are read.
problem-out-of-order = Comes before “{ $with }” of the row above. Put the rows in order of time.
problem-unknown-calculation = No calculation has this name. There are: { $accepted }.
problem-not-json = Not JSON from column { $at } on.
problem-too-long = Longer than the { $most } bytes that are read.

## The page as such.

page-title = { $place } · Coldwright
title-bench = Bench

crash-title = Coldwright has stopped
crash-text = Something went wrong that should not have. What you typed is kept and stands here and in the address.
crash-reload = Open again
crash-start-anew = Start with an empty page
crash-same-place = Link to this place
crash-rescue = Save all jobs to a file
crash-rescued = Saved: look among the downloads
crash-not-rescued = Not saved: the jobs cannot be read just now

title-tubes = Tubes
title-convert = Convert
title-settings = Settings

## The frame: header, navigation, what is kept on the phone.

frame-navigation = Places
keeping-fetching = Being kept …
keeping-kept = Works offline
keeping-failed = Not kept on this phone yet: open once more with a signal
keeping-one-file = Works offline
keeping-unsupported = This browser keeps nothing: a signal is needed
update-now = A newer version is on this phone.
update-clock = A newer version is on this phone. It can be opened when no hold and no pump is running.
update-unsaved = A newer version is on this phone. First save the jobs as a file: they are in memory only.
update-take = Open it now

hand-on = Hand on
hand-on-absent = Not on this phone yet: once the page has had a signal, this works without.

## Words that stand at many places.

why = why
why-of = Why: { $figure }
learn-steps = Ask why at each step
plus-minus = ±
unit-year = year
plus-minus-of = Change the sign of { $field }
margin-inside = { $margin } inside the limit, measured to ± { $uncertainty }
margin-on = { $margin } from the limit, measured to ± { $uncertainty }
margin-outside = { $margin } beyond the limit, measured to ± { $uncertainty }
margin-inside-exact = { $margin } inside the limit
margin-on-exact = on the limit
margin-outside-exact = { $margin } beyond the limit

verdict-in-band = in band
verdict-out-of-band = out of band
verdict-cannot-tell = cannot tell
verdict-open = open

## Bench: torque.

bench-sizes = Tube sizes
torque-heading = Tighten a { $tube } flare nut to
torque-aim = aim { $aim }
torque-one-figure = the plate’s one figure
torque-switch-unit = Change to { $unit }
torque-withheld = No torque is shown until this is put right.
torque-bands-drawn = { $families }. The band that holds is { $band }, the aim { $aim }.
torque-family-band = { $family } { $band }
torque-basis-plate = the plate’s own figure
torque-basis-family = { $family } alone
torque-basis-overlap = what all families allow
torque-basis-overlap-one = the one family with this size
torque-basis-change = change
torque-family-choice = Whose band holds
torque-family-all = What all families allow
torque-unit-choice = Torque unit
torque-plate-wins = The plate or the instructions of the equipment outrank every family: enter their figure.
torque-caution-wrench = Hold the fitting still with a second wrench, or the tube twists.
torque-caution-code = The equipment’s instructions and local code come first. Work on refrigerant circuits is for licensed persons.

field-tube = Tube
field-family = Family
field-plateTorque = Torque on the plate
field-adapterLength = Adapter, drive to nut
field-adapterAngle = Adapter angle
field-wrenchLength = Wrench, hand to drive
field-wrenchRange = Wrench scale, least to most
field-wrenchAccuracy = Wrench accuracy
field-flareClass = Class
field-tool = Flaring tool
field-measuredCone = Measured cone
field-caliperUncertainty = Caliper may be off by
field-series = Series
field-wall = Wall
field-length = Length
field-temperature = Temperature
field-designPressure = Design pressure (PS), gauge
field-text = Figure with its unit
field-quantity = Quantity
field-altitude = Altitude
field-barometer = Barometer at the place
field-input = Input
field-calculation = Calculation
field-line = Line

hint-plateTorque = 68–82, 75 ± 7 or one figure
hint-adapterAngle = 0° straight out, 90° square, 180° back
hint-wrenchRange = such as 20–100
hint-wrenchAccuracy = empty: 4 %, up to 10 N·m 6 %
hint-caliperUncertainty = empty: 0.05 mm
hint-measuredCone = across the widest part of the rim
hint-wrenchLength = middle of the grip to the square
hint-adapterLength = centre to centre

choice-en-378-2 = EN 378-2
choice-jis-b-8607 = JIS B 8607
choice-common-practice = Common practice
choice-plate = Plate
choice-family = Family
choice-overlap = Overlap
choice-oil-on-thread-and-faces = Thread and both flare faces oiled with the system’s oil, as these figures take for granted.
assumes-oil-on-thread-and-faces = thread and faces oiled

## Bench: flare.

flare-heading = Flare
flare-cone = Cone
flare-cone-of-class = Cone, { $class }
flare-nut = Nut and wrench
flare-thread = Thread
flare-thread-pitch = pitch { $pitch }
flare-projection = Tube above the bar
flare-projection-open = choose the tool
flare-angle = Cone angle to the axis
flare-radius = Radius at its foot
flare-no-cone = not in this series
flare-measured-open = Measure the finished cone and enter it here.
flare-drawing = Section of a { $tube } flare to scale: tube { $diameter } outside, cone { $cone }, { $angle } to the axis.
flare-drawing-no-cone = Section of a { $tube } tube to scale: { $diameter } outside. The series has no cone for it.
flare-drawing-projection = In the bar: { $projection } of tube above it.
flare-drawing-measured = The measured cone is dashed: { $measured }.
flare-in-bar = in the bar
flare-finished = finished
flare-steps = Cut square, ream, no burr, nut on first, oil on the cone’s two faces.

choice-class-1 = Class 1
choice-class-2 = Class 2
class-short-class-1 = class 1
class-short-class-2 = class 2
class-use-class-1 = R-22, R-134a, R-407C
class-use-class-2 = R-410A, R-32 and their like
choice-eccentric-clutch = Eccentric cone, clutch, for high pressure
choice-ordinary-clutch = Clutch, ordinary
choice-wing-nut-bar = Bar and wing nut
choice-keep = Use it.
choice-measure-again = Too near a limit to tell. Measure again, across another diameter or with a finer caliper.
choice-more-above-bar = Too small. Cut it off and flare anew with more tube above the bar.
choice-less-above-bar = Too wide. Cut it off and flare anew with less tube above the bar.
notice-no-cone-in-series = The series has no cone and no nut for this size: take them from the equipment’s instructions.
notice-largest-flared-tube = The largest tube that is flared; some codes want larger or all joints brazed. Ask the local one.
choice-no-cone-in-series = { notice-no-cone-in-series }
choice-largest-flared-tube = { notice-largest-flared-tube }

## Bench: wrench.

wrench-heading = Wrench
wrench-set = Set the wrench to
wrench-set-adapter = With the adapter, set
wrench-gives = { $aim } at the nut; the band on the scale is { $band }
wrench-straight = Without an offset adapter the scale shows what the nut gets.
wrench-withheld = No setting is shown until the entries are put right.
wrench-angles = Usual angles
wrench-drawing = Wrench to scale, { $length } from hand to drive, adapter { $adapter } at { $angle }. Turn clockwise, seen from the tube; a second wrench holds the fitting.
wrench-hold-still = hold the fitting still
wrench-fit-heading = Does this wrench suit?
wrench-fit-open = Enter the wrench’s scale to see whether it suits.
wrench-fit-in-band = This wrench suits.
wrench-fit-out-of-band = This wrench does not suit.
wrench-fit-cannot-tell = Cannot tell: too near a limit.
wrench-fit-on-scale = Setting { $figure } on the trusted part { $band } of the scale; its bottom fifth is not trusted
wrench-fit-hits = At the nut, { $accuracy } off either way
wrench-fit-hits-open = The plate gives one figure without a tolerance, so a band cannot be hit or missed.

## Tubes.

tubes-heading = Copper tube
tubes-intro = Annealed coils. Tap a size for what it holds and why.
tubes-metal-temperature = Metal temperature
tubes-size = Size
tubes-bore = Bore
tubes-wall = Wall
tubes-mass = Copper
tubes-volume = Holds
tubes-rated = Rated
tubes-outside-diameter = Outside diameter
tubes-bore-area = Area of the bore
tubes-mass-per-length = Mass of the tube
tubes-volume-per-metre = A metre holds
tubes-rated-pressure = Rated working pressure
tubes-allowable-stress = Allowable stress at { $temperature }, annealed
tubes-brazed = Brazing anneals drawn tube: it takes these figures too.
tubes-length = Length of tube
tubes-length-volume = It holds
tubes-length-mass = It weighs
tubes-verdict-in-band = Bears the design pressure
tubes-verdict-out-of-band = Does not bear the design pressure
tubes-verdict-cannot-tell = On the limit of the design pressure
tubes-caution = The rating is the tube’s alone. Flare joints, valves and the equipment’s plate can allow less; local code decides.
choice-astm-b280 = Inch sizes, ASTM B280
choice-en-12735-1 = Metric sizes, EN 12735-1

## Convert.

convert-heading = Convert
convert-label = Type a figure with its unit
convert-examples = Examples
convert-fraction = nearest 1/64: { $fraction } in
convert-fraction-off = leaves { $remainder }
convert-air = Air: altitude or barometer
convert-air-barometer = with the barometer’s { $pressure } around
convert-air-altitude = with { $pressure } around, the standard air of that altitude
convert-air-assumed-sea-level = with { $pressure } around: sea level is assumed
convert-empty = 140 psi, 5/8, −12 °F, 500 micron, 2 lb 6 oz: write it as you would say it.
convert-working = Gauge and absolute

choice-barometer = Barometer
choice-altitude = Altitude
choice-assumed-sea-level = Sea level assumed

quantity-gauge-pressure = gauge pressure
quantity-absolute-pressure = absolute pressure
quantity-vacuum = vacuum below the air
quantity-torque = torque
quantity-length = length
quantity-temperature = temperature
quantity-mass = mass
quantity-power = power
quantity-volume-flow = volume flow
quantity-area = area
quantity-volume = volume
quantity-mass-per-length = mass per length
quantity-density = density
quantity-mass-flow = mass flow
quantity-force = force
quantity-energy = energy
quantity-velocity = velocity
quantity-specific-enthalpy = specific enthalpy
quantity-specific-heat-capacity = specific heat capacity
quantity-dynamic-viscosity = dynamic viscosity
quantity-time = time
quantity-angle = angle
quantity-ratio = ratio
quantity-temperature-difference = temperature difference
quantity-pressure-difference = pressure difference
quantity-stress = stress
quantity-altitude = altitude
quantity-pressure-rate = pressure over time
quantity-leak-rate = leak rate
quantity-yearly-loss = yearly loss
quantity-thermal-conductivity = thermal conductivity
quantity-heat-transfer-coefficient = heat transfer coefficient
quantity-heat-flow-per-length = heat per length

## Settings.

settings-heading = Settings
settings-language = Language
settings-language-of-page = Sentences, dates and the decimal mark
settings-language-browser = As the phone
settings-language-missing = Not on this phone yet: it is spoken as soon as it has come.
settings-units = Units
settings-units-metric = Metric
settings-units-customary = Inch, pound
settings-units-metric-detail = mm, bar, °C, g/m
settings-units-customary-detail = in, psi, °F, oz/ft
settings-system = Everything but torque
settings-light = Light
settings-torque-unit = Torque, as on the wrench
settings-look = Look
settings-theme-system = As the phone
settings-theme-day = Day
settings-theme-dark = Dark cellar
settings-theme-sunlight = Sunlight
settings-hand = Hand that taps
settings-hand-right = Right
settings-hand-left = Left
settings-learn = Workings
settings-learn-no = Folded
settings-learn-yes = Open, with questions to learn by
settings-kit = Tool and wrench in the bag
settings-kit-hint = Taken for every nut until you change them. A link can carry others and leaves these alone.
settings-cautions = Cautions
settings-caution-plate = The plate and the instructions of the equipment outrank every figure here, and so does local code.
settings-caution-licence = Work on refrigerant circuits is for trained and licensed persons. This page replaces neither.
settings-caution-pressure = Wear eye protection. Never open a joint under pressure. Never use oxygen or compressed air on a circuit.
settings-caution-sources = A figure marked “from memory” or “no source” was not checked against its document. Check it against yours.
settings-edition = This edition
settings-edition-page = Version of the page: { $build }
settings-edition-core = Edition of the tables and of the core that computes: { $core }
settings-update-failed = A newer version could not be fetched whole. This one goes on as it is; the next visit with a signal tries again.
settings-sources = Sources
settings-sources-intro = Every figure points to one of these.
settings-nothing-sent = Nothing leaves this phone: no account, no server, no tracking.

source-kind-standard = standard
source-kind-handbook = handbook
source-kind-public-agency = public agency
source-kind-reference-library = reference library
source-kind-common-practice = common practice
standing-read = read in the source
standing-second-hand = read at second hand
standing-from-memory = from memory, not checked
standing-derived = derived
standing-no-source = no source
source-title-common-practice = Common practice of the trade
source-title-plate = The equipment’s own plate or instructions, as entered

## Working: what a step finds, and what its figures are.

step-aim-plate = Aim: the middle of the plate’s band
step-aim-family = Aim: the middle of the family’s band
step-aim-overlap = Aim: the middle of what all families allow
step-wrench-setting = What to set on the wrench
step-least-cone = Least cone
step-thread-pitch = Pitch of the thread
step-bore = Bore
step-bore-area = Area of the bore
step-tube-mass = Mass of the tube
step-rated-pressure = Rated working pressure
step-gauge-to-absolute = From gauge to absolute
step-standard-pressure = Pressure of the standard air

figure-least-torque = least torque
figure-most-torque = most torque
figure-aim = torque to aim at
figure-wrench-length = wrench, hand to drive
figure-adapter-length = adapter, drive to nut
figure-adapter-angle = angle of the adapter
figure-wrench-setting = setting on the wrench
figure-largest-cone = largest cone
figure-least-cone = least cone
figure-cone-tolerance = tolerance of the cone
figure-threads-per-inch = threads an inch
figure-thread-pitch = pitch
figure-outside-diameter = outside diameter
figure-wall = wall
figure-bore = bore
figure-bore-area = area of the bore
figure-copper-density = density of copper
figure-mass-per-length = mass per length
figure-allowable-stress = allowable stress
figure-least-wall = least wall with the tolerance
figure-largest-diameter = largest diameter with the tolerance
figure-rated-pressure = rated working pressure
figure-gauge-pressure = gauge pressure
figure-air-pressure = pressure of the air
figure-absolute-pressure = absolute pressure
figure-altitude = altitude

## Fluids

problem-too-low = Below what the method holds for. The least is { $limit }.
problem-too-high = Above what the method holds for. The most is { $limit }.
problem-near-critical = Too near the critical point, { $critical }, for a figure that can be trusted. The most is { $limit }.
problem-above-critical = At or above the critical point, { $critical }: nothing boils or condenses there.
problem-not-vapour = Colder than the dew temperature, { $limit }: some of it would be liquid.
problem-wrong-count = Fill in { $needed } of these, not { $found }: { $accepted }.
problem-dependent = Says nearly the same as “{ $with }”, so that the two fix nothing. Enter another fact.

field-refrigerant = Refrigerant
field-gaugePressure = Pressure, gauge
field-absolutePressure = Pressure, absolute
field-curvePoints = Points of the curve
field-curveFrom = Curve from
field-curveTo = Curve to
field-tableStep = Step of the table
field-tableRows = Rows of the table
field-dewTemperature = Dew temperature
field-superheat = Superheat
field-firstGaugePressure = Gauge at the start
field-firstAbsolutePressure = Absolute pressure at the start
field-firstTemperature = Temperature at the start
field-secondTemperature = Temperature now
field-secondGaugePressure = Gauge now
field-secondBarometer = Barometer now
field-dryBulb = Dry bulb
field-wetBulb = Wet bulb
field-dewPoint = Dew point
field-relativeHumidity = Relative humidity
field-humidityRatio = Humidity ratio
field-enthalpy = Enthalpy, for a kilogram of dry air
field-bore = Bore
field-roughness = Roughness of the wall
field-density = Density
field-viscosity = Viscosity
field-velocity = Velocity
field-massFlow = Mass flow
field-volumeFlow = Volume flow
field-elbows90 = Elbows of 90°
field-elbows45 = Elbows of 45°
field-teeRuns = Tees, straight through
field-teeBranches = Tees, through the branch

choice-alkylbenzene = Alkylbenzene
choice-mineral = Mineral oil
choice-polyalkylene-glycol = Polyalkylene glycol (PAG)
choice-polyolester = Polyolester (POE)
choice-ice = Ice
choice-liquid = Liquid
choice-laminar = Laminar
choice-transition = Between laminar and turbulent: friction is uncertain
choice-turbulent = Turbulent
choice-saturated = Saturated
choice-superheated = Superheated
choice-viscosity-of-the-library = Viscosity of the reference library, within about 5 %.
choice-viscosity-mixed-from-components = Viscosity mixed from the components: liquid within about 10 %, cold up to 22 %; vapour within about 9 %.

step-bubble-temperature = Bubble temperature: an expansion fitted to the equation of state
step-dew-temperature = Dew temperature: an expansion fitted to the equation of state
step-bubble-pressure = Bubble pressure: an expansion fitted to the equation of state
step-dew-pressure = Dew pressure: an expansion fitted to the equation of state
step-latent-heat = Latent heat
step-superheat = Superheat
step-vapour-density = Density of the vapour: an expansion fitted to the equation of state
step-ideal-gas-hold = As an ideal gas
step-real-gas-hold = As real nitrogen at constant density
step-absolute-to-gauge = From absolute to gauge
step-boiling-point = Boiling point of water
step-boiling-pressure = Pressure at which water boils
step-frost-point = Temperature of ice under this vapour
step-sublimation-pressure = Vapour pressure of ice
step-humidity-ratio = Humidity ratio
step-air-enthalpy = Enthalpy of the air
step-air-density = Density of the air
step-reynolds = Reynolds number
step-friction-laminar = Friction factor, laminar
step-friction-transition = Friction factor between laminar and turbulent
step-friction-turbulent = Friction factor, turbulent
step-friction-drop = Pressure drop by friction

figure-critical-pressure = critical pressure
figure-critical-temperature = critical temperature
figure-bubble-temperature = bubble temperature
figure-dew-temperature = dew temperature
figure-bubble-pressure = bubble pressure
figure-dew-pressure = dew pressure
figure-saturation-temperature = temperature
figure-vapour-enthalpy = enthalpy of the vapour
figure-liquid-enthalpy = enthalpy of the liquid
figure-latent-heat = latent heat
figure-vapour-temperature = temperature of the vapour
figure-superheat = superheat
figure-density = density
figure-first-pressure = pressure at the start, absolute
figure-first-temperature = temperature at the start
figure-second-temperature = temperature now
figure-compressibility = compressibility factor
figure-ideal-pressure = pressure of an ideal gas
figure-expected-pressure = pressure to expect, absolute
figure-vapour-pressure = pressure of the vapour
figure-water-temperature = temperature
figure-dry-bulb = dry bulb
figure-relative-humidity = relative humidity
figure-humidity-ratio = humidity ratio
figure-air-enthalpy = enthalpy for a kilogram of dry air
figure-velocity = velocity
figure-viscosity = viscosity
figure-reynolds = Reynolds number
figure-relative-roughness = roughness over bore
figure-friction-factor = Darcy friction factor
figure-equivalent-length = length with fittings
figure-pressure-drop = pressure drop

## Cards: the list, and what the fluid cards say.

title-jobs = Jobs
title-job = Job
title-handed = A job handed on
title-cards = Cards
title-saturation = Saturation
title-moist-air = Moist air
title-water = Water in a vacuum
cards-heading = One question each
card-saturation = Gauge reading to bubble and dew temperature, or back
card-moist-air = Any two of dry bulb, wet bulb, humidity and their like give the others
card-water = At what vacuum water boils, and when it is ice

saturation-heading = { $refrigerant } boils and condenses at
saturation-empty = Type what the gauge shows, or a temperature.
saturation-withheld = No figure is shown until this is put right.
saturation-bubble = bubble
saturation-dew = dew
saturation-both = boils and condenses
saturation-bubble-counts = subcooling from here
saturation-dew-counts = superheat from here
saturation-both-counts = one substance: no glide
saturation-glide = glide { $glide }
saturation-glide-at-dew = glide { $glide }, at the dew pressure
saturation-uncertainty = ± { $temperature }, or ± { $pressure } of the absolute pressure
saturation-uncertainty-mixture = ± { $temperature }, or ± { $pressure } of the absolute pressure: R‑32 with R‑1234yf is known no better
saturation-properties = Liquid and vapour
saturation-absolute-pressure = Absolute pressure
saturation-bubble-pressure = Bubble pressure, absolute
saturation-dew-pressure = Dew pressure, absolute
saturation-liquid-density = Density of the liquid
saturation-vapour-density = Density of the vapour
saturation-latent-heat = Latent heat
saturation-caution-flammable = It burns: no flame, spark or hot surface, air moving, tools and recovery gear made for it.
saturation-caution-toxic = Toxic, and it burns: breathing protection at hand, a second person near. Never in copper tube.
saturation-caution-cold = Liquid refrigerant freezes skin and eyes: gloves and eye protection. In a closed room it takes the air’s place.

curve-heading = { $refrigerant }, pressure over temperature
curve-drawing = Pressure over temperature of { $refrigerant }, to scale, from { $coldest } to { $hottest } and from { $least } to { $most } on the gauge.
curve-hint = Drag the mark, tap the curve, or use the arrow keys.
curve-bubble = bubble
curve-dew = dew
curve-both = bubble and dew
curve-value = { $reading }: bubble { $bubble }, dew { $dew }

facts-about = about { $refrigerant }
facts-summary = { $safetyClass }, { $fill }
facts-safety-class = Safety class
facts-class-A1 = lower toxicity, no flame spread
facts-class-A2L = lower toxicity, burns slowly
facts-class-A3 = lower toxicity, burns readily
facts-class-B2L = toxic, burns slowly
facts-charged = Leaves the cylinder
facts-as-liquid = charge as liquid
facts-as-either = charge as liquid or vapour
facts-oils = Oil
facts-composition = By mass
facts-flammability-limit = Burns in air from (LFL)
facts-concentration-limit = Most in an occupied room (RCL)
facts-flare-class = Flare joints
facts-warming-ar4 = GWP, 100 years, AR4
facts-warming-ar5 = GWP, 100 years, AR5
facts-warming-ar6 = GWP, 100 years, AR6
facts-critical-point = Critical point

table-heading = Table around the reading
table-caption = { $refrigerant }, saturation
table-altitude = Altitude { $altitude }: { $air }
table-gauge = Pressure
table-bubble = Bubble
table-dew = Dew
table-gauge-unit = { $unit } gauge
table-print = Print this table

convert-no-refrigerant = none
convert-boiling = { $refrigerant } boils and condenses
convert-to-saturation = Saturation of it, with curve and table

moist-air-heading = Moist air
moist-air-intro = Enter any two.
moist-air-others = Then also
moist-air-empty = Two facts are needed, such as dry bulb and wet bulb.
moist-air-withheld = No figure is shown until this is put right.

water-heading = Under a vacuum
water-pressure = Vacuum gauge, absolute
water-usual = Usual readings
water-unit = The gauge is marked in
water-empty = Type what the vacuum gauge shows, or a temperature.
water-ice = ice turns to vapour at
water-liquid = water boils at
water-ice-pressure = vapour pressure of ice
water-liquid-pressure = water boils at
water-supercooled = Water not yet frozen
water-note = If a reading holds with the pump shut off, and all of the tube is warmer than the temperature here, neither water nor ice is left in it. Oil and refrigerant that boil off raise a reading too.

## What the cards of the job share.

cards-group-plan = Plan
cards-group-prove = Prove it tight
cards-group-dry = Dry it
cards-group-charge = Charge
cards-group-run = Run check
cards-group-look-up = Look up
choose = choose
truth-true = yes
truth-false = no
example-show = Show me an example
example-shown = An example: change what you like.
bring-back = Back to what stood here
rows-add = One more row
rows-row = row { $row }
rows-remove = Take row { $row } out
rows-removed = Row { $row } is out.
rows-put-back = Put it back
rows-full = { $most } rows are the most that a link can carry.
rows-more = This link has more than { $most } rows. The rows after these are not read.
rows-paste = Paste many rows
rows-paste-hint = One row a line: { $names }. Semicolons, tabs or blanks between them.
rows-paste-take = Take these rows
rows-paste-take-out = Take them out again
rows-paste-taken = { $count ->
    [0] No row was taken.
    [1] One row was taken.
   *[other] { $count } rows were taken.
}
rows-paste-no-figure = Line { $line } has no figure: “{ $text }”
rows-paste-too-many-columns = Line { $line } has more columns than there are fields: “{ $text }”. Put semicolons between them.
rows-paste-no-room = Line { $line } found no room, { $most } rows are the most: “{ $text }”

## Friction in a tube

title-terms = Glossary
title-pipe-friction = Friction in a tube
card-terms = What a word means, and its other names
card-pipe-friction = What pressure a flow costs in a tube with its fittings
intro-pipe-friction = One phase, liquid or vapour, at one density: how much pressure the way costs.
pipe-friction-empty = Enter bore, density, viscosity and one of the flows; with a length, the drop follows.
pipe-friction-regime = Flow
pipe-friction-fittings = Fittings count as tube of
hint-roughness = empty: drawn tube, 1.5 µm

## The cards of the job's calculations; what else they say is in en-cards.ftl.

title-line-set = Line set
card-line-set = Whether liquid, gas and oil arrive: drops, lift, part load, ports and limits
title-standing-test = Pressure hold
card-standing-test = Test pressure and stages; whether a drop is the temperature’s or a leak’s
title-pump-down = Pump-down
card-pump-down = How long the pump takes to each vacuum, what holds it back, what to change
title-vacuum-hold = Vacuum hold
card-vacuum-hold = Pump valved off: dry and tight, moisture, or a leak?
title-room-limit = Room limit
card-room-limit = Largest charge for a room, smallest room for a charge
title-insulation = Insulation
card-insulation = How thick it must be so that a cold line stays dry
title-charge = Charge
card-charge = How much goes in, where the scale must stop, what cylinders may hold
title-running = Run check
card-running = Superheat, subcooling and the air: as they should be, or what it usually means
