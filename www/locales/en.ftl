### English. Ids name what they say; the core names ids and arguments, never sentences.

## Problems with an entry. $found is what stands there, $example and $accepted what would do.

problem-missing = Needed here, for example { $example }.
problem-not-a-number = No figure at place { $at }: “{ $found }”. Write it as { $example }.
problem-division-by-zero = A fraction cannot have 0 below the line.
problem-ambiguous-number = “{ $found }” can be { $decimal } or { $thousands }. Write the one you mean.
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

title-tubes = Tubes
title-convert = Convert
title-settings = Settings

## The frame: header, navigation, what is kept on the phone.

frame-navigation = Places
keeping-fetching = Keeping everything on this phone …
keeping-kept = All on this phone, no signal needed
keeping-failed = Not kept on this phone yet: open once more with a signal
keeping-unsupported = This browser keeps nothing: a signal is needed
update-waits = A newer version is on this phone.
update-take = Open it now

## Words that stand at many places.

why = why
why-of = Why: { $figure }
plus-minus = ±
plus-minus-of = Change the sign of { $field }
margin-inside = { $margin } inside the limit, measured to ± { $uncertainty }
margin-on = { $margin } from the limit, measured to ± { $uncertainty }
margin-outside = { $margin } beyond the limit, measured to ± { $uncertainty }
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

## Settings.

settings-heading = Settings
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
settings-kit = Tool and wrench in the bag
settings-kit-hint = Taken for every nut until you change them. A link can carry others and leaves these alone.
settings-cautions = Cautions
settings-caution-plate = The plate and the instructions of the equipment outrank every figure here, and so does local code.
settings-caution-licence = Work on refrigerant circuits is for trained and licensed persons. This page replaces neither.
settings-caution-pressure = Wear eye protection. Never open a joint under pressure. Never use oxygen or compressed air on a circuit.
settings-caution-sources = A figure marked “from memory” or “no source” was not checked against its document. Check it against yours.
settings-edition = This edition
settings-edition-page = Page { $build }
settings-edition-core = Core and tables { $core }
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
saturation-uncertainty = ± { $temperature }, or ± { $pressure } of the absolute pressure
saturation-uncertainty-mixture = ± { $temperature }, or ± { $pressure } of the absolute pressure: R‑32 with R‑1234yf is known no better
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

## Line set.

field-cooling = Cooling
field-heating = Heating
field-liquidLine = Liquid line
field-suctionLine = Gas line
field-lift = Lift between the units
field-higherUnit = Higher unit
field-leastCapacity = Least capacity, of the full one
field-oilDensity = Density of the oil
field-longestLength = Longest line, by the plate
field-longestLift = Largest lift, by the plate
field-prechargedLength = Length that the factory charge is for
field-tubeTemperature = Temperature of the tubes
field-capacity = Capacity
field-evaporatingTemperature = Evaporating temperature (dew)
field-condensingTemperature = Condensing temperature (bubble)
field-subcooling = Subcooling
field-dischargeSuperheat = Superheat of the discharge gas
field-tubeSeries = Series
field-ports = Ports joined into the line

choice-indoor = Indoor
choice-outdoor = Outdoor

step-equivalent-length = Length with fittings
step-port-areas = The line’s area over that of the ports
step-mass-flow = Mass flow
step-velocity = Velocity
step-saturation-drop = The drop as kelvins of saturation temperature
step-static-head = Pressure that the climb takes from the liquid
step-flash-margin = Subcooling left at the expansion device
step-oil-return = Least velocity that carries oil up
step-capacity-ratio = Capacity with the drop over that without

figure-length = length
figure-fitting-bores = fittings, in bores
figure-port-areas = area of the ports’ bores
figure-area-ratio = the line’s area over that of the ports
figure-capacity = capacity
figure-mass-flow = mass flow
figure-saturation-drop = shift of the saturation temperature
figure-climb = climb of the liquid
figure-static-head = pressure lost by the climb
figure-liquid-temperature = temperature of the liquid
figure-subcooling-left = subcooling left
figure-oil-density = density of the oil
figure-least-velocity = least velocity
figure-inlet-density = density at the compressor
figure-outlet-density = density at the evaporator
figure-capacity-ratio = capacity with the drop over that without

title-line-set = Line set
card-line-set = Whether liquid, gas and oil arrive: drops, lift, part load, ports and limits
intro-line-set = The two lines from unit to unit: what they hold back, and whether liquid arrives as liquid and oil comes home.
line-set-empty = Enter a tube, its length, and capacity, temperatures, superheat and subcooling of the unit; with the lift, liquid and oil follow.

line-set-cooling = cooling
line-set-heating = heating
line-set-liquidLine = liquid line
line-set-suctionLine = gas line
line-set-flow = What flows in { $way }
line-set-lines = Lines
line-set-length = Length of both lines, one way
line-set-no-tube = none
line-set-plate = From the plate
line-set-ports = Ports joined into a line
line-set-port = Tube of the port
line-set-liquid-ports = Into the liquid line
line-set-gas-ports = Into the gas line
line-set-add-port = One more port
line-set-fine = Other fittings, walls, bores, oil
line-set-liquid-wall = Liquid line, other wall
line-set-liquid-bore = Liquid line, bore instead of a tube
line-set-gas-wall = Gas line, other wall
line-set-gas-bore = Gas line, bore instead of a tube

hint-lift = 0 if they stand level
hint-heatingDischargeSuperheat = empty: 30 K, common practice
hint-leastCapacity = for the oil at part load
hint-tubeTemperature = empty: 150 °F (66 °C), or hotter gas
hint-oilDensity = empty: 950 kg/m³

line-set-left = Subcooling left in { $way }
line-set-capacity = Capacity kept
line-set-capacity-row = Capacity kept with this gas line
line-set-gas-drop = Gas line takes
line-set-gas-velocity = Gas velocity

line-set-all-in-band = All that was checked is inside.
line-set-all-cannot-tell = { $count ->
    [one] One check is too near its limit to tell.
   *[other] { $count } checks are too near their limits to tell.
}
line-set-all-out-of-band = { $count ->
    [one] One check is outside.
   *[other] { $count } checks are outside.
}
line-set-inside = { $count ->
    [one] One check is inside
   *[other] { $count } checks are inside
}

line-set-check-flash = Subcooling left at the expansion device, { $of }
line-set-check-oil = Gas that carries oil up, { $of }
line-set-check-oil-least = Gas that carries oil up at the least capacity, { $of }
line-set-check-velocity = Velocity of the gas, { $of }
line-set-check-rating = Pressure that the { $of } bears
line-set-check-ports = Area of the { $of } over its ports
line-set-check-length = Length of the line
line-set-check-lift = Lift
line-set-check-precharge = Length against the factory charge

line-set-flash-in-band = arrives as liquid
line-set-flash-cannot-tell = too near to tell whether it boils
line-set-flash-out-of-band = boils before the expansion device
line-set-oil-in-band = oil climbs
line-set-oil-cannot-tell = too near to tell whether oil climbs
line-set-oil-out-of-band = oil stays below
line-set-oil-least-in-band = { line-set-oil-in-band }
line-set-oil-least-cannot-tell = { line-set-oil-cannot-tell }
line-set-oil-least-out-of-band = { line-set-oil-out-of-band }
line-set-velocity-in-band = as recommended
line-set-velocity-cannot-tell = at the edge of what is recommended
line-set-velocity-out-of-band = not as recommended
line-set-rating-in-band = bears the design pressure
line-set-rating-cannot-tell = too near to tell
line-set-rating-out-of-band = bears less than the design pressure
line-set-ports-in-band = wide enough for them
line-set-ports-cannot-tell = as wide as they are, within the tolerance
line-set-ports-out-of-band = narrower than they are
line-set-length-in-band = the plate allows it
line-set-length-cannot-tell = at the plate’s limit
line-set-length-out-of-band = longer than the plate allows
line-set-lift-in-band = the plate allows it
line-set-lift-cannot-tell = at the plate’s limit
line-set-lift-out-of-band = higher than the plate allows
line-set-precharge-in-band = the factory charge is enough
line-set-precharge-cannot-tell = just what the factory charge is for
line-set-precharge-out-of-band = refrigerant is to be added

line-set-margin = Limit { $limit }: { $margin } { $side ->
    [beyond] beyond it
   *[inside] inside
}, reckoned to ± { $uncertainty }
line-set-margin-exact = Limit { $limit }: { $margin } { $side ->
    [beyond] beyond it
   *[inside] inside
}

line-set-effect-cooling = Refrigerating effect
line-set-effect-heating = Heating effect
line-set-discharge-superheat = Superheat of the discharge gas
line-set-usual = common practice
line-set-head-lost = Pressure the liquid loses by climbing
line-set-head-gained = Pressure the liquid gains by falling
line-set-oil-from = Oil climbs from this capacity on
line-set-liquid = Liquid line
line-set-gas-cooling = Gas line: suction gas
line-set-gas-heating = Gas line: discharge gas
line-set-drop = Drop by friction
line-set-tube-liquidLine = Tube of the liquid line
line-set-tube-suctionLine = Tube of the gas line
line-set-rated-at = at { $temperature }
line-set-run = The indoor unit left, { $length } of line. Diameters are to scale; enter the lift and the higher unit to draw them.
line-set-run-and-lift = The indoor unit left, { $length } of line, { $lift } of lift: to scale, and so are the diameters.
line-set-drawing = Both lines from the side, { $length } long. { $higher ->
    [outdoor] The outdoor unit stands { $lift } higher.
    [indoor] The indoor unit stands { $lift } higher.
    [none] Both units stand level.
   *[unknown] Which unit stands higher is not known.
}

line-set-caution-plate = Lengths, lifts and tubes of the equipment’s own instructions come first, and so does local code. Work for licensed persons.
line-set-caution-device = Reckoned with the expansion device at the end of the liquid line. Where it sits in the outdoor unit, that line carries liquid and gas in cooling, and the liquid’s figures do not hold there.
line-set-caution-oil = The oil figure is from memory of the literature and good to 20 %. Traps and split risers by the equipment’s instructions.
## Room limit and insulation: fields, choices, steps, figures.

quantity-thermal-conductivity = thermal conductivity
quantity-heat-transfer-coefficient = heat transfer coefficient
quantity-heat-flow-per-length = heat per length

field-safetyClass = Safety class
field-lowerFlammabilityLimit = LFL from the data sheet
field-concentrationLimit = RCL or practical limit
field-rule = Rule
field-charge = Charge
field-chargeUncertainty = Charge may be off by
field-rooms = Rooms
field-name = Name
field-area = Floor area
field-height = Floor to ceiling
field-mounting = Indoor unit
field-releaseHeight = Height of release
field-lineTemperature = Line, at its coldest
field-conductivity = Conductivity of the insulation
field-emissivity = Emissivity of its outside
field-airSpeed = Air across the line
field-surfaceCoefficient = Coefficient at the outside
field-dewPointMargin = Margin above the dew point
field-thickness = Wall of the insulation
field-thermometerUncertainty = Thermometer may be off by
field-humidityUncertainty = Humidity may be off by

choice-A1 = A1
choice-A2L = A2L
choice-A3 = A3
choice-B2L = B2L
choice-room-formula = Real Decreto 552/2019, IF-04, in the form of EN 378-1 and IEC 60335-2-40
choice-concentration-limit = Concentration limit times volume: RCL of ASHRAE 34, International Mechanical Code 1103.1
choice-floor = Floor
choice-window = Window
choice-wall = Wall
choice-ceiling = Ceiling
choice-by-room-formula = height of release and floor area
choice-by-small-charge = the charge up to which no room is too small
choice-by-cap = the cap, however large the room is
choice-by-concentration = concentration limit times volume
choice-no-room-limit = So small a charge may be in any room.
choice-room-limited = The room limits this charge.
choice-above-cap = More than the cap: too much for any room without additional measures.
choice-local-code-decides = The code that holds at the place, in its own edition, decides; so do the equipment’s instructions.
choice-flammability-limit-entered = The LFL is the one entered, not the table’s.
choice-concentration-limit-entered = The concentration limit is the one entered, not the table’s.
choice-above-concentration-limit = More than concentration limit times volume (RCL), which other codes go by.
choice-measures-needed = Above the cap: only with the additional measures that the code names, such as ventilation, shut-off, alarm.
choice-above-every-cap = Above every cap: not in a room that people are in.
choice-coefficient-entered = Coefficient as entered.
choice-coefficient-still-air = Still air, worked out with radiation.
choice-coefficient-moving-air = Moving air, worked out with radiation. When the air stands still, more is needed.

step-no-room-limit = Up to this charge there is no room limit
step-charge-cap = Cap in a room without additional measures
step-room-charge = Largest charge by the formula
step-smallest-room = Smallest floor area
step-concentration-charge = Largest charge by the concentration
step-dew-point = Dew point: where the vapour in the air is saturated
step-coefficient-still = Coefficient at the outside: natural convection and radiation
step-coefficient-moving = Coefficient at the outside: air across the line and radiation, or natural convection if it is more
step-insulation-thickness = Least thickness: heat that reaches the outside passes through
step-surface-temperature = Temperature of the outside with the thickness entered
step-heat-gain = Heat that a metre takes up

figure-lower-flammability-limit = lower flammability limit
figure-no-room-limit = charge without a room limit
figure-charge-cap = cap
figure-release-height = height of release
figure-floor-area = floor area
figure-room-charge = largest charge
figure-charge = charge
figure-smallest-area = smallest floor area
figure-concentration-limit = concentration limit
figure-room-height = floor to ceiling
figure-dew-point = dew point
figure-emissivity = emissivity
figure-air-speed = speed of the air
figure-surface-temperature = temperature of the outside
figure-least-surface-temperature = least temperature of the outside
figure-insulated-diameter = diameter over the insulation
figure-surface-coefficient = coefficient at the outside
figure-conductivity = conductivity of the insulation
figure-line-temperature = temperature of the line
figure-insulation-thickness = thickness, one wall
figure-heat-gain = heat per metre
## Running

field-mode = Mode
field-meteringDevice = Metering device
field-suctionGaugePressure = Suction, gauge
field-suctionLineTemperature = Suction line
field-liquidGaugePressure = Liquid, gauge
field-liquidLineTemperature = Liquid line
field-dischargeGaugePressure = Discharge, gauge
field-plateSuperheat = Superheat on the plate
field-plateSubcooling = Subcooling on the plate
field-returnDryBulb = Return air, dry bulb
field-returnWetBulb = Return air, wet bulb
field-returnRelativeHumidity = Return air, relative humidity
field-supplyDryBulb = Supply air, dry bulb
field-supplyWetBulb = Supply air, wet bulb
field-supplyRelativeHumidity = Supply air, relative humidity
field-outdoorDryBulb = Outdoor air, dry bulb
field-targetSplit = Temperature split to aim at
field-evaporatingDifferenceBand = Usual air over evaporating
field-condensingDifferenceBand = Usual condensing over air
field-airflow = Airflow over the indoor coil
field-plateCapacity = Capacity on the plate
field-airflowChecked = Low airflow ruled out
field-runningTime = Has run for
field-suctionGaugeUncertainty = Suction gauge may be off by
field-liquidGaugeUncertainty = Liquid gauge may be off by
field-airflowUncertainty = Airflow may be off by

choice-cooling = Cooling
choice-heating = Heating
choice-thermostatic-valve = Thermostatic valve
choice-electronic-valve = Electronic valve
choice-fixed-orifice = Fixed orifice
choice-low = low
choice-high = high
choice-in-band = in band
choice-superheat = superheat
choice-subcooling = subcooling
choice-evaporating-difference = air over evaporating
choice-condensing-difference = condensing over air
choice-temperature-split = temperature split
choice-suction-gauge = suction gauge
choice-liquid-gauge = liquid gauge
choice-suction-thermometer = thermometer on the suction line
choice-liquid-thermometer = thermometer on the liquid line
choice-air-thermometers = thermometers in the air
choice-hygrometer = hygrometer
choice-airflow-measurement = measured airflow
choice-refrigerant-data = data of the refrigerant
choice-valve-range = a valve whose maker gives no superheat
choice-orifice-rule = rule for a fixed orifice
choice-needs-readings = Its readings are not all entered.
choice-needs-plate = No verdict without the plate’s figure.
choice-needs-target = No verdict without a target: enter one.
choice-needs-device = No verdict without the plate’s figure or the metering device.
choice-needs-wet-bulb-and-outdoor = No target without the indoor wet bulb and the outdoor temperature.
choice-target-too-low = The target would be under 3 K (5 °F): no valid test. Warm the rooms or come back in other weather.
choice-outdoor-too-cold = Colder than 13 °C (55 °F) outdoors: the charge cannot be judged by these figures. Weigh it in.
choice-outside-rule = Outside what the rule holds for: wet bulb 10 to 24 °C (50 to 76 °F), outdoors 13 to 46 °C (55 to 115 °F).
choice-not-settled = No verdict before it has run for 15 minutes.
choice-liquid-in-suction = The suction line is colder than its dew temperature: liquid in it, or a reading or the refrigerant is wrong.
choice-vapour-in-liquid = The liquid line is warmer than its bubble temperature: vapour in it, or a reading or the refrigerant is wrong.
choice-subcooling-from-discharge = Counted from the discharge pressure, which is above that of the liquid: the subcooling is less than shown.
choice-settling-not-entered = Verdicts hold only after 15 minutes of running.
choice-outdoor-not-entered = Verdicts hold only from 13 °C (55 °F) outdoors.
choice-air-the-other-way = The air changes the other way than the mode says.
choice-causes-in-cooling-only = Usual causes are known here for cooling only.
choice-airflow-ruled-out = Low airflow is ruled out.
choice-airflow-not-ruled-out = First rule out low airflow over the indoor coil: filter, coil, fan, registers, ice. Until then add no refrigerant.
choice-airflow-too-little = The airflow is too little for the charge to be judged: mend that first. Add no refrigerant.
choice-live-parts = Live parts behind the covers, capacitors also after switching off: keep hands and leads away.
choice-turning-parts = Fans start by themselves: no loose sleeves, hair or leads near them.
choice-hot-and-cold-lines = The discharge line burns, liquid that escapes freezes: gloves and eye protection.
choice-instructions-and-code-first = The equipment’s instructions and local code come first. Work for licensed persons.
choice-low-indoor-airflow = Too little air over the indoor coil
choice-undercharge = Too little refrigerant
choice-overcharge = Too much refrigerant
choice-outdoor-coil = Outdoor coil or its air
choice-non-condensables = Air or nitrogen in the circuit
choice-metering-restriction = Metering device lets too little through
choice-liquid-line-restriction = Liquid line partly blocked
choice-metering-overfeed = Metering device lets too much through
choice-weak-compressor = Compressor or reversing valve leaks
choice-check-indoor-airflow = Look at filter, coil, fan speed and direction, registers and ducts, and for ice.
choice-rule-out-airflow = Rule out low airflow first. Until then the charge cannot be judged: add nothing.
choice-find-leak-then-weigh-in = Find and mend the leak, evacuate, then weigh in what the plate says.
choice-compare-charge = Compare what was weighed in with plate and line set; recover what is too much.
choice-check-outdoor-coil = Wash the coil; look at fan, its direction and speed, clearances, and air that comes back.
choice-check-standing-pressure = Switch off until all is at one temperature. More pressure than saturation there: recover, evacuate, weigh in anew.
choice-check-metering-device = Look at strainer, bulb and power head, or coil and drive of an electronic valve.
choice-check-liquid-line = Feel along it for a drop in temperature: drier, kink, service valve not fully open.
choice-check-bulb-and-orifice = Look at the bulb (tight, insulated), the size of the orifice, and whether the valve closes.
choice-check-compressor = Compare current with the plate; look at discharge temperature and both sides of the reversing valve.

step-subcooling = Subcooling
step-difference-uncertainty = How far it may be off, by gauge, thermometer and refrigerant data
step-compression-ratio = Compression ratio
step-orifice-rule = Target superheat of a fixed orifice
step-dry-air-flow = Dry air over the coil
step-sensible-capacity = Sensible heat
step-total-capacity = Total heat

figure-suction-line-temperature = temperature of the suction line
figure-liquid-line-temperature = temperature of the liquid line
figure-subcooling = subcooling
figure-gauge-share = by the gauge
figure-thermometer-share = by the thermometer
figure-data-share = by the refrigerant’s data
figure-uncertainty = may be off by
figure-high-pressure = pressure on the high side, absolute
figure-suction-pressure = pressure on the suction side, absolute
figure-compression-ratio = compression ratio
figure-return-wet-bulb = wet bulb of the return air
figure-outdoor-dry-bulb = outdoor dry bulb
figure-target-superheat = target superheat
figure-airflow = airflow
figure-return-dry-bulb = dry bulb of the return air
figure-supply-dry-bulb = dry bulb of the supply air
figure-return-humidity-ratio = humidity ratio of the return air
figure-dry-air-flow = dry air, mass in a time
figure-sensible-capacity = sensible heat
figure-return-enthalpy = enthalpy of the return air
figure-supply-enthalpy = enthalpy of the supply air
figure-total-capacity = total heat
## Pump-down

title-pump-down = Pump-down
card-pump-down = How long the pump takes to each vacuum, what holds it back, what to change
intro-pump-down = Pump, hoses and system give the time to each vacuum. Water holds it up.
pump-down-empty = Enter the speed of the pump and the volume, or the tubes, that it empties.
pump-down-to = to { $pressure }
pump-down-never = never
pump-down-none-reached = None of these pressures is reached: the pump stops at { $limit }.
pump-down-turbulence = and about { $time } more, since air does not flow smoothly at first
pump-down-water-stands = { $mass } of water: the gauge stands near { $pressure } until it is gone, after { $time } as a film at { $temperature }.
pump-down-water-stays = { $mass } of water at { $temperature }: its vapour, { $pressure }, is thinner than what the pump reaches. It stays.
pump-down-drops = In drops 3 mm deep it takes { $time } and gets as cold as { $temperature }.
pump-down-ice-forms = Below 0.01 °C and 4588 micron water is ice. It goes slowly, and the gauge may fall as if all were dry. Warm the tubes, or break with dry nitrogen and begin again.
pump-down-ice-possible = Drops 3 mm deep freeze under this pump. Ice goes slowly, and the gauge may fall as if all were dry. Warm the tubes, or throttle the pump until the water is gone.
pump-down-course = The course of the pressure
pump-down-curve = as reckoned
pump-down-curve-alternative = The pressure falls over time to { $pressure }.
pump-down-milestone = pressure to reach
pump-down-held-back = What holds the pump back at { $pressure }
pump-down-numbered = { $part } { $number }
pump-down-speed-left = At the system { $part } of the pump’s speed is left. At the pump the pressure is { $pressure }.
pump-down-under-ppm = less than 1 ppm
pump-down-changes = What would save most on the way to { $pressure }
pump-down-saves = saves { $saved }: then { $time } in all
pump-down-less = { $time } less
pump-down-sized = { $name }, { $size }
pump-down-triple = { $count ->
    [one] One evacuation
    [3] Triple evacuation, nitrogen between
   *[other] { $count } evacuations, nitrogen between
}
pump-down-evacuation = { $number }. to { $pressure }
pump-down-left = leaves { $part } of the first air, then nitrogen to { $pressure } absolute
pump-down-left-last = leaves { $part } of the first air
pump-down-together = pumping in all
pump-down-hoses = Hoses, side by side
pump-down-hoses-hint = Each from the system to the pump. Bore: inside, 5 mm with 1/4 in fittings, 9 mm with 3/8 in ones.
pump-down-add-hose = One more hose
pump-down-volume = Volume, all of it
pump-down-tubes = Or the tubes that are emptied
pump-down-add-tube = One more tube
pump-down-finer = Other pressures, nitrogen breaks, valve core
pump-down-targets = Pressures to reach
pump-down-breaks = Evacuations with nitrogen between
pump-down-caution-compressor = Power to the unit off and locked. Its compressor must never run or be under voltage in a vacuum, and never serve as the pump.
pump-down-caution-empty = Only when the refrigerant has been recovered and the system holds no pressure. With a flammable one: no spark nearby, a pump meant for it.
pump-down-caution-mist = The pump blows out oil mist: let it out into moving air. Cloudy oil holds water: change it.
pump-down-caution-nitrogen = Break the vacuum with dry nitrogen alone, through a regulator and a relief valve.
hint-ultimatePressure = empty: 50 micron
hint-coilVolume = added to the tubes
hint-water = damp and empty: 5 g
hint-waterDepth = empty: a film as warm as the tubes
hint-ambientTemperature = empty: 20 °C
hint-sharePressure = empty: the lowest that is reached
hint-startingPressure = empty: the air’s
hint-coreBore = empty: 2 mm, an estimate
hint-coreLength = empty: 10 mm

field-pumpSpeed = Pump speed
field-ultimatePressure = Ultimate pressure of the pump
field-hoses = Hoses
field-core = Valve core
field-count = How many
field-volume = Volume
field-tubes = Tubes
field-coilVolume = Coils and the rest
field-moisture = Moisture
field-water = Water in it
field-waterDepth = Depth of the water
field-ambientTemperature = Ambient temperature
field-startingPressure = Pressure at the start
field-targets = Pressures to reach
field-pressure = Pressure
field-sharePressure = Pressure for the shares
field-evacuations = Evacuations
field-lowPressure = Pump down to
field-breakPressure = Break with nitrogen to
field-coreBore = Bore that stands for a core
field-coreLength = Length of that bore

choice-in = in
choice-out = out
choice-dry = Dry
choice-damp = Damp
choice-no-ice = No ice
choice-ice-possible = Ice possible
choice-ice-forms = Ice
choice-pump = Pump
choice-hose = Hose
choice-valve-core = Valve core
choice-cores-out = Take the valve cores out
choice-larger-hose = Larger hoses
choice-shorter-hose = Hoses half as long
choice-second-hose = One more hose like the first
choice-larger-pump = A pump twice as fast
choice-no-hose-entered = No hose is entered: the pump is taken to stand right at the system.
choice-hose-short-for-its-bore = A hose is shorter than ten bores: it resists more than reckoned here.
choice-core-resistance-assumed = A valve core is taken to resist as a bore of 2 mm, 10 mm long, unless another is entered. That is an estimate without a source.
choice-target-below-ultimate = The pump never gets below its ultimate pressure. Fresh oil may lower it.
choice-water-stays = This pump does not get the water out: its vapour is thinner than the pump’s ultimate pressure. Warm the system.
choice-vapour-taken-as-air = Water vapour is taken to flow through the hoses like air. It flows up to twice as easily: the water can be gone in down to half of the time.
choice-water-left-at-break = Water is left when the nitrogen comes in. Nitrogen thins gas, not water or ice: what is left is more than stands here.
choice-laminar-flow-assumed = Reckoned for smooth flow of air at 20 °C. Near the pressure of the air it is not smooth; what that adds stands beside the times.
choice-tight-system-assumed = Leaks, gas out of oil and the resistance of the lines themselves are left out: it takes longer, not shorter.

step-hose-conductance = Conductance of a hose
step-core-conductance = Conductance of the valve core before it
step-effective-speed = Speed that is left at the system
step-water-stand = Where the gauge stands while there is water
step-water-gone = When the water is gone
step-pump-down-time = Time to the lowest target that is reached
step-residual = What is left of the first gas

figure-tube-length = length
figure-mean-pressure = mean pressure in it
figure-conductance = conductance
figure-line-conductance = conductance of all hoses
figure-pump-speed = speed of the pump
figure-ultimate-pressure = ultimate pressure
figure-inlet-pressure = pressure at the pump
figure-effective-speed = speed at the system
figure-evacuated-volume = volume
figure-water-mass = mass of the water
figure-dry-after = time until it is gone
figure-starting-pressure = pressure at the start
figure-target-pressure = pressure to reach
figure-pump-down-time = time
figure-residual-before = part left by the break before
figure-low-pressure = low pressure
figure-break-pressure = break pressure
figure-residual = part left
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

title-pipe-friction = Friction in a tube
card-pipe-friction = What pressure a flow costs in a tube with its fittings
intro-pipe-friction = One phase, liquid or vapour, at one density: how much pressure the way costs.
pipe-friction-empty = Enter bore, density, viscosity and one of the flows; with a length, the drop follows.
pipe-friction-regime = Flow
pipe-friction-fittings = Fittings count as tube of
hint-roughness = empty: drawn tube, 1.5 µm

## Cards: room limit, insulation.

title-room-limit = Room limit
card-room-limit = Largest charge for a room, smallest room for a charge
intro-room-limit = All of the charge may leak into one room: each room must bear it.
room-limit-empty = Choose the refrigerant, then enter a room, the charge, or both.
room-limit-class-of-refrigerant = the refrigerant’s
room-limit-largest = largest charge
room-limit-smallest = smallest room
room-limit-rooms = What each room allows
room-limit-room = room { $number }
room-limit-add = One more room
room-limit-rooms-hint = Indoor unit or height of release for refrigerants that burn; floor to ceiling for those that do not.
room-limit-others = Another rule, limits from the data sheet, a refrigerant not listed
room-limit-mountings = Smallest floor for this charge
room-limit-mounting = { $mounting }, released at { $height }
room-limit-at-least = this charge needs { $area }
room-limit-concentration = { $mass } by RCL times volume
room-limit-by-rule = By { $rule }.
room-limit-governs = Least is allowed by { $room }: { $limit }.
room-limit-limited-by = Limited by: { $limit }.
room-limit-in-band = within the limit
room-limit-out-of-band = too much for the room
room-limit-cannot-tell = cannot tell: too near the limit
room-limit-no-charge = Enter the charge to compare.
room-limit-no-room = Enter the room to compare.
room-limit-basis = What these figures go by
room-limit-with-measures = Cap with the additional measures that the code names
room-limit-caution-licence = Work on refrigerant circuits is for licensed persons. This figure is no approval of an installation.
hint-chargeUncertainty = empty: 10 g
hint-lowerFlammabilityLimit = empty: the table’s
hint-concentrationLimit = empty: the table’s RCL

title-insulation = Insulation
card-insulation = How thick it must be so that a cold line stays dry
intro-insulation = Water condenses where the outside is colder than the dew point of the air.
insulation-empty = Enter the tube, its coldest temperature, and the air around.
insulation-least = least wall
insulation-outside = outside, { $thickness } wall
insulation-dew-point = dew point
insulation-none-needed = No insulation is needed against condensation: the line is no colder than the dew point.
insulation-in-band = stays dry
insulation-out-of-band = water will condense
insulation-cannot-tell = cannot tell: too near the dew point
insulation-next = The next wall that is commonly sold: { $thickness }.
insulation-sure = Too near the dew point to be sure: { $thickness } is.
insulation-none-sure = Too near the dew point to be sure, and so is every other: dry the air, or layer.
insulation-none-so-thick = Thicker than what is commonly sold: in layers, or drier air.
insulation-no-thickness = No thickness will do in air this moist: dry the air.
insulation-common = Walls commonly sold
insulation-common-row = outside { $temperature }, { $heat }
insulation-bare = bare
insulation-others = Wet bulb or dew point, material, surface, instruments
insulation-drawing = Section to scale: { $tube }, insulation { $thickness }, outside { $temperature }, dew point { $dewPoint }.
insulation-caution-joints = Seal seams, ends and joints: moist air behind the insulation condenses on the tube whatever its thickness.
insulation-caution-code = The equipment’s instructions and local energy and fire codes may ask for more, or for another material.
insulation-figure-dew-point = Dew point
insulation-figure-humidity = Relative humidity
insulation-figure-heat = Heat into a metre of line
insulation-figure-bare-heat = Bare, it would be
insulation-figure-conductivity = Conductivity
insulation-figure-coefficient = Coefficient at the outside
hint-conductivity = empty: foam, 0.040 W/(m·K)
hint-emissivity = empty: 0.9, foam, tape, paint; bright metal 0.1
hint-airSpeed = empty: still air
hint-surfaceCoefficient = empty: worked out
hint-dewPointMargin = empty: 0 K
hint-thickness = to judge one
hint-thermometerUncertainty = empty: 0.5 K
hint-humidityUncertainty = empty: 3 %
insulation-tube = tube { $tube }
insulation-air = Air around
insulation-dew-point-at = dew point { $dewPoint }
## Charge

field-plateCharge = Factory charge on the plate
field-plateAdder = The plate’s adder for more line
field-plateReduction = The plate’s reduction for less line
field-arrives = The equipment arrives
field-accessories = Accessories
field-chargeToAdd = To weigh in, if known already
field-liquidTube = Liquid line
field-liquidBore = Liquid line, bore
field-liquidTemperature = Liquid in the line
field-vapourTube = Vapour line
field-vapourBore = Vapour line, bore
field-vapourDewTemperature = Dew temperature in the vapour line
field-cylinderStart = Cylinder on the scale at the start
field-cylinderNow = The scale now
field-cylinderTare = The cylinder empty (TW)
field-scaleResolution = Smallest step of the scale
field-scaleUncertainty = The scale may be off by
field-recoveryWaterCapacity = Water capacity (WC)
field-recoveryVolume = Volume of the cylinder
field-recoveryTare = Recovery cylinder empty (TW)
field-recoveryGross = Recovery cylinder as weighed
field-recoveryTemperature = Temperature of the 80 %
field-hoseBore = Bore of the hose
field-hoseLength = Length of the hose
field-hosePhase = In the hose
field-hoseTemperature = Temperature of the hose
field-mass = Refrigerant in it
field-phase = Filled with

choice-charged = Charged
choice-empty = Empty
choice-vapour = Vapour
choice-line-by-plate = By the plate
choice-line-from-physics = From physics
choice-line-served-by-factory-charge = The factory charge serves this line.
choice-line-left-out = No line counted
choice-charge-entered = As entered
choice-out-of-cylinder = Out of the cylinder
choice-into-cylinder = Into the cylinder
choice-scale-go-on = Go on
choice-scale-stop = Stop: the mark is reached, as near as this scale can tell.
choice-scale-too-much = Too much has gone.
choice-eighty-percent-of-volume = 80 % of the volume as liquid
choice-never-full-when-hot = Never full of liquid up to 60 °C
choice-eighty-percent-of-water = 80 % of the water’s weight
choice-line-not-counted = No line is entered: the factory charge stands as it is.
choice-line-by-physics = The plate gives no adder, so the line is reckoned from physics. Look for the plate’s figure: it comes first.
choice-vapour-line-not-counted = The vapour line is not counted in the adder from physics.
choice-liquid-line-taken-full = Physics takes the liquid line as full of liquid. Where the expansion valve sits in the outdoor unit, it holds less in cooling.
choice-plate-and-physics-apart = Plate and physics differ by more than 30 %. Look again at the line’s size and at the unit of the adder. The plate’s figure holds.
choice-no-reduction-on-plate = The line is shorter than the factory charge serves, and no reduction from the plate is entered: nothing is taken out.
choice-cylinder-lacks-refrigerant = This cylinder does not hold enough. Weigh in what it has, then the rest from another one.
choice-scale-too-coarse = This scale is coarse for so little: it may be off by more than a tenth of it.
choice-water-rule-overfills = 80 % of the water’s weight, an old rule, would overfill this cylinder with this refrigerant.
choice-refrigerant-burns = It burns: no flame, spark or hot surface, air moving, tools, hoses and recovery gear made for it.
choice-refrigerant-toxic = Toxic, and it burns: breathing protection at hand, a second person near.
choice-refrigerant-freezes = Liquid freezes skin and eyes: gloves and eye protection. In a closed room the vapour takes the air’s place.
choice-refrigerant-never-vented = Never let it into the air where the law forbids it, as most laws do: recover it. Work for licensed persons.
choice-charge-liquid-only = Charge as liquid, or its composition shifts; throttle it into the low side so that the compressor gets no liquid.
choice-cylinder-never-above-eighty = Never fill a cylinder above 80 %, nor above its own mark, nor one past its test date or made for another refrigerant.

step-liquid-contents = What the liquid holds in each length
step-vapour-contents = What the vapour holds in each length
step-line-extra = What the line adds
step-line-reduction = What the plate takes off for the shorter line
step-total-charge = The whole charge
step-stop-mark = Where the scale must stop, before rounding to its step
step-charged-so-far = What has moved so far
step-cylinder-volume = Volume of the cylinder
step-fill-by-volume = 80 % of the volume as liquid
step-fill-when-hot = Not full of liquid when hot
step-part-full-when-hot = How full that is at 55 °C
step-largest-gross = The most on the scale
step-warming-ar4 = Carbon dioxide that warms as much, AR4
step-warming-ar5 = Carbon dioxide that warms as much, AR5
step-warming-ar6 = Carbon dioxide that warms as much, AR6

figure-contents-per-length = refrigerant in each length
figure-line-adder = adder
figure-line-reduction = the plate’s reduction
figure-line-length = length of the line
figure-precharged-length = length that the factory charge serves
figure-line-extra = what the line adds
figure-line-taken-out = what is taken off for a shorter line
figure-factory-charge = factory charge
figure-accessories-charge = in the accessories
figure-total-charge = whole charge
figure-cylinder-start = cylinder at the start
figure-cylinder-now = cylinder now
figure-to-weigh = what has to move
figure-stop-mark = where to stop
figure-charged-so-far = moved so far
figure-water-capacity = water it holds
figure-water-density = density of water at 60 °F
figure-cylinder-volume = volume of the cylinder
figure-liquid-density = density of the liquid
figure-liquid-density-warm = density of the liquid at 50 °C
figure-liquid-density-hot = density of the liquid when hot
figure-most-contents = most refrigerant
figure-cylinder-tare = the cylinder empty
figure-largest-gross = most on the scale
figure-part-full = part of the volume
figure-warming-potential = warming potential, 100 years
figure-carbon-dioxide = carbon dioxide

## The card of the charge

title-charge = Charge
card-charge = How much goes in, where the scale must stop, what cylinders may hold
intro-charge = Weigh it in: by the plate first, with physics beside it. The equipment’s instructions and local law come first.
charge-empty = Enter the plate’s figures and the line; with the cylinder on the scale, the mark to stop at follows.
charge-scale = On the scale
charge-plate = Plate and line
charge-length = Line as run, one way
charge-more = Accessories and more
charge-accessories = Accessories
charge-accessories-add = One more accessory
charge-stop-falling = Close the valve when the scale falls to
charge-stop-rising = Close the valve when the scale rises to
charge-to-add = To weigh in
charge-to-take-out = To take out, by the plate
charge-go-on = Go on: { $amount } to go
charge-too-much = Too much by { $amount }: recover it
charge-moved = { $amount } has moved, ± { $uncertainty }.
charge-zeroed = On a scale set to zero at the start: { $amount }.
charge-lacking = This cylinder lacks { $amount }.
charge-no-target = What goes in is not known yet.
charge-factory = Factory charge
charge-line = Line, by the plate
charge-line-physics = Line, from physics
charge-reduction = Off for the shorter line, by the plate
charge-total = Whole charge
charge-physics = Plate against physics
charge-no-line = not entered
charge-states = Temperatures in the lines
charge-superheat = Superheat, empty: 8 K (14 °F)
charge-bars = Adders to one scale: plate { $plate }, physics { $physics }.
charge-bar-plate = Plate
charge-bar-physics = Physics
charge-liquid-holds = Liquid line, full at { $temperature }
charge-vapour-holds = Vapour line at { $temperature }
charge-adder-difference = Plate less physics
charge-physics-extra = More line, from physics
charge-plate-extra = plate { $mass }
charge-extra-difference = Plate less physics, over it
charge-contents = All of the line holds
charge-warming = { $charge } of { $refrigerant } as carbon dioxide
charge-recovery = Recovery cylinder
charge-recovery-empty = Enter what is stamped on its collar: water capacity or volume, and the tare. Without both there is no limit.
charge-recovery-caution = Recovered refrigerant holds oil, and may be a mixture: its density is not quite that of the pure one. Weigh while filling, and stop early. The cylinder’s own mark outranks all of this.
charge-largest-gross = The most on the scale
charge-room-in-band = Room for { $room } more
charge-room-cannot-tell = Full, as near as this scale can tell: stop
charge-room-out-of-band = Overfilled by { $room }: take it out now
charge-room-uncertainty = weighed to ± { $uncertainty }
charge-cylinder = Cylinder in section: liquid takes { $now } of the volume, the most is { $limit }.
charge-cylinder-empty = Cylinder in section: liquid may take { $limit } of the volume.
charge-rules = The rule, read three ways
charge-rule-holds = holds here
charge-at = at { $temperature }
charge-full-when-hot = So filled, liquid takes at 55 °C (131 °F)
charge-in-it = In it now
charge-hose = Hose taken off
charge-hose-holds = It lets go
charge-hose-note = Hoses with valves at their ends let go less. Draw the liquid into the running system before you take them off.

hint-liquidTemperature = empty: 40 °C (104 °F)
hint-vapourDewTemperature = empty: 10 °C (50 °F)
hint-plateReduction = only if the plate says so
hint-recoveryTemperature = empty: 25 °C (77 °F)
hint-scaleUncertainty = empty: 10 g (0.35 oz)
hint-scaleResolution = the mark is rounded to it
hint-hoseTemperature = empty: 25 °C (77 °F)
## Vacuum hold

field-readings = Readings
field-time = Time
field-pumpEndPressure = Last reading with the pump on
field-gaugeResolution = Smallest step of the gauge
field-gaugeNoise = Scatter of the gauge
field-gaugeUncertainty = Gauge may be off by
field-dryPressure = Dry if it levels off below
field-passRule = Rule
field-passPressure = Highest pressure at the end
field-passTime = Pump valved off for
field-curveUntil = Curve to

choice-dry-and-tight = Dry and tight
choice-moisture = Moisture
choice-leak = Leak
choice-cannot-tell = Cannot tell
choice-open = Open
choice-too-few-readings = Four readings over at least two minutes are needed.
choice-causes-alike = Two causes explain these readings about as well.
choice-fits-no-law = No law fits these readings: a valve was moved, or the gauge is at fault.
choice-readings-fall = The readings fall: the pump still draws, or gauge or tubing cools.
choice-level-too-high = Even, but too high: the pump-down was not finished.
choice-slow-rise = The rise is too slow for a leak as found here and too fast for a tight system.
choice-gauge-shows-nothing = The gauge shows nothing.
choice-linear-rise = Even rise
choice-plateau = Rise that levels off
choice-plateau-and-linear-rise = Levelling off and even rise
choice-ufgs-15182 = UFGS 15182
choice-real-decreto-552-2019 = Real Decreto 552/2019

step-even-rise = The likeliest law at the last reading: an even rise
step-levelling = The likeliest law at the last reading: a rise that levels off
step-levelling-and-rise = The likeliest law at the last reading: both together
step-cause = Probability of the likeliest cause
step-leak-gas = Air that comes in

figure-start-pressure = pressure at the first reading
figure-plateau = pressure that it levels off at
figure-time-constant = time constant
figure-rise-rate = rise over time
figure-time = time after the first reading
figure-fitted-pressure = pressure by this law
figure-most-scatter = largest scatter that was tried
figure-gauge-step = step of the gauge
figure-probability = probability
figure-volume = volume
figure-leak-rate = gas through the leak
## Standing test

field-leakToSee = Loss that matters
field-testRule = Rule of the test
field-plateTestPressure = Test pressure on the plate
field-lowestRating = Lowest-rated part bears
field-cylinderVolume = Nitrogen cylinder, water volume
field-cylinderPressure = Nitrogen cylinder, gauge

choice-tight = Tight
choice-losing-gas = Losing gas
choice-loss-ruled-out = A leak of the size that matters would have shown, and none did.
choice-loss-beyond-uncertainty = More is lost than gauge, thermometer and weather explain.
choice-large-loss = More than a fifth of the gas is gone.
choice-too-short-to-tell = Too short, or read too coarsely: a leak of the size that matters could still hide.
choice-near-leak-to-see = Some loss shows, not beyond chance. With it a leak of the size that matters cannot be ruled out.
choice-loss-may-have-ended = A loss shows that may be over: gas let out at one moment, or nitrogen still settling after filling. Read on.
choice-fell-near-end = Gas was lost so near the end that nobody knows how it goes on. Read on.
choice-pressure-rose = The pressure rose more than temperature explains. Look at the probe, the gauge and the closed valve.
choice-above-lowest-rating = A reading stands above what the lowest-rated part bears: let the pressure down now.
choice-test-pressure-capped = The rule wants more than the lowest-rated part bears. The stages end at its rating: take the part off, or ask who made the equipment.
choice-stray = off both its neighbours: misread, or the gauge was knocked
choice-temperature-changing = the temperature changed too fast for the nitrogen to follow
choice-settling = the nitrogen was still settling after filling
choice-before-step = before gas was let out or added at one moment
choice-after-step = after gas was let out at one moment, too near the end
choice-within-rating = Every part bears it.
choice-above-rating = A part bears less than the rule wants.
choice-rating-open = What the lowest-rated part bears is not entered: find it before any pressure goes on.
choice-soap-joints = Listen, and soap every joint.
choice-stop-and-look = Stop. Nothing gives way, the gauge stands.
choice-hold = Close the cylinder, take the hose off, hold and read.

step-test-pressure = Test pressure by the rule
step-nitrogen-need = Nitrogen that flows in
step-hold-difference = Measured less expected
step-pressure-loss-rate = Loss over time at one temperature: a weighted line through all readings that count
step-loss-uncertainty = Its standard uncertainty: what differs from reading to reading, and what no number of readings averages out
step-upper-limit = No more than this is lost
step-least-detectable = Least loss that such a hold shows
step-hold-to-see = How long a hold must last to show the loss that matters
step-leak-throughput = Nitrogen through the leak
step-refrigerant-loss = Refrigerant through the same leak at 25 °C, taken as laminar flow through a fine channel

figure-test-factor = factor of the rule
figure-rule-pressure = pressure that the rule starts from
figure-test-pressure = test pressure
figure-nitrogen-density = density of the nitrogen at the test pressure
figure-nitrogen-density-before = density of the nitrogen before
figure-nitrogen-mass = nitrogen
figure-measured-gauge-pressure = measured gauge pressure
figure-hold-difference = measured less expected
figure-hold-points = points
figure-hold-duration = from the first to the last
figure-hold-scatter = scatter over what the instruments explain
figure-pressure-loss-rate = loss over time
figure-gauge-resolution = smallest step of the gauge
figure-gauge-uncertainty = gauge may be off by
figure-thermometer-uncertainty = thermometer may be off by
figure-loss-uncertainty = standard uncertainty of the loss
figure-coverage-factor = standard uncertainties
figure-upper-limit = most that is lost
figure-least-detectable = least loss that shows
figure-leak-to-see = loss that matters
figure-hold-to-see = length of the hold
figure-nitrogen-throughput = nitrogen through the leak
figure-nitrogen-viscosity = viscosity of nitrogen
figure-refrigerant-loss = refrigerant lost

## The card of the running system.

title-running = Run check
card-running = Superheat, subcooling and the air: as they should be, or what it usually means
intro-running = Running for 15 minutes, gauges and thermometers on. Enter what was measured; each figure needs its own few readings.
running-empty = Type suction pressure and suction line temperature.
running-superheat = Superheat
running-subcooling = Subcooling
running-target-superheat = Superheat to aim at
running-in-band = Runs as it should
running-out-of-band = Does not run as it should
running-cannot-tell = Cannot tell yet whether it runs as it should
running-line = { $figure }: { $standing }
running-no-verdict = no verdict
running-standing = { $standing }; should be { $target }
running-target = should be { $target }, { $basis }
running-basis-plate = as entered from the plate
running-basis-valve-range = for a valve whose maker gives none
running-basis-orifice-rule = by the rule for a fixed orifice
running-basis-common-practice = common practice
running-decides = To decide: a finer { $instrument }.
running-data-decide = Nearer than the refrigerant’s data are known: let the maker’s own table decide.
running-missing = Also wanted: { $fields }
running-causes = What it usually means
running-causes-open = Causes are looked for in cooling, when a figure has a verdict.
running-nothing-out = Nothing is surely out of band: no cause to look for.
running-nothing-fits = No usual cause shows these signs together. Take the readings again.
running-explains = explains { $explains } of { $deviations }
running-would-decide = Would tell the first ones apart: { $figures }
running-circuit = The circuit
running-evaporating = Evaporates at (dew)
running-condensing = Condenses at (bubble)
running-evaporating-difference = Return air over that
running-evaporating-difference-heating = Outdoor air over that
running-condensing-difference = Over the outdoor air
running-condensing-difference-heating = Over the return air
running-compression-ratio = Compression ratio
running-ratio = { $ratio } : 1
running-air = Air over the indoor coil
running-split = Temperature split
running-rise = Temperature rise
running-airflow = Airflow
running-airflow-least = charge can be judged from { $least }
running-total = Total heat
running-sensible = Sensible heat
running-latent = Latent heat
running-sensible-heat-ratio = Sensible part
running-of-plate = Of the plate’s capacity
running-taken-as-dry = Without a humidity the air is taken as dry, which changes the sensible heat by less than 1 %.
running-plate-conditions = The plate’s capacity holds at the conditions of its rating, not at these.
running-others = Instruments, usual bands, discharge pressure
running-others-note = Left empty: suction gauge 3.5 psi (24 kPa), liquid gauge 7 psi (48 kPa), thermometers 1.4 °F (0.8 K), relative humidity 3 %, airflow 10 %; return air over evaporating 14 to 22 K, condensing over outdoor air 5.6 to 16.7 K, in cooling without an electronic valve.

hint-plateSuperheat = one figure or a band
hint-plateSubcooling = one figure or a band
hint-targetSplit = one figure or a band
hint-runningTime = without a stop

## The standing test.

