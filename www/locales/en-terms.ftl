### English, the glossary. `term-<id>`: names parted by semicolons, the usual one first; after a bar spellings that are
### recognised and not offered. Plurals by -s and -es are recognised by themselves. `says-<id>`: what it means.

terms-find = A word, by any of its names
terms-count = { $count ->
    [0] None here by that name.
    [one] { $count } term
   *[other] { $count } terms
}
terms-others = Also: { $names }
terms-all = All terms
terms-close = Close

## Lines and fittings.

term-gas-line = gas line; suction line; vapour line; larger line; low side line | vapor line; large line
says-gas-line = The wider, insulated tube between the units. In cooling it takes cold vapour to the compressor; in heating it carries hot gas, so “suction” is only half the truth.
term-liquid-line = liquid line; small line; smaller line
says-liquid-line = The narrower tube between the units. It holds most of the refrigerant that a line adds.
term-line-set = line set; refrigerant lines; interconnecting piping; pipe set | lineset
says-line-set = The pair of tubes from unit to unit with their insulation.
term-service-valve = service valve; stop valve; shut-off valve; king valve; front-seating valve
says-service-valve = The valve on the unit where a line joins. Shut, it keeps the factory charge in. Open it only once the lines have passed pressure and vacuum.
term-service-port = service port; access port; gauge port; charging port | service ports
says-service-port = Where a hose is put on to measure, evacuate or charge. Its cap seals; the core alone may weep.
term-valve-core = valve core; access core; spring-loaded core
says-valve-core = The sprung insert in a service port that opens when pressed. It throttles a vacuum, so it is taken out for the pump.
term-flare-nut = flare nut; union nut; coupling nut | nut
says-flare-nut = The nut that presses the flared tube on the cone of a union. Never back off one that is under pressure.
term-flare = flare; flared end; flared joint; flare joint; flare connection | flared tube
says-flare = The end of a soft copper tube spread to a cone that seals metal on metal. It must be even, without burr or crack.
term-union = flare union; union; half union; flare connector
says-union = The fitting with an outside thread and a cone that a flare is pressed on.
term-burr = burr; cutting burr
says-burr = The lip that a cutter leaves inside a tube. Ream it away with the end down, so that no chip falls in.
term-braze = brazing; braze; hard soldering; brazed joint | brazed
says-braze = Joining with a filler that melts above 450 °C. Nitrogen flows through meanwhile; no pressure and no refrigerant inside.
term-nitrogen-purge = nitrogen purge; flowing nitrogen; inert gas brazing; purge with nitrogen
says-nitrogen-purge = A gentle stream of dry nitrogen through the tube while it is brazed: no scale forms. The far end stays open, the place aired.
term-oil-trap = oil trap; suction trap; P-trap; U-trap
says-oil-trap = A bend at the foot of a rising gas line where oil gathers until gas carries it up. Only where the plate or the design asks for it.
term-lift = lift; height difference; elevation difference; vertical separation
says-lift = How much higher one unit stands than the other. The plate states the most that is allowed.
term-riser = riser; rising line; vertical run
says-riser = A part of a line that climbs. Gas must be fast enough in it to carry oil.
term-equivalent-length = equivalent length; effective length; developed length
says-equivalent-length = The run plus a length for each fitting that costs as much pressure.
term-insulation = insulation; lagging; pipe insulation; tube sleeve
says-insulation = Closed-cell foam that keeps a cold line warm outside and dry. Both ends and joints must be closed too.
term-soft-copper = annealed copper; soft copper; soft temper; soft tube | annealed coil; annealed coils
says-soft-copper = Copper made soft so that it bends and flares. It comes in coils, capped to keep it dry and clean.

## Tools.

term-torque-wrench = torque wrench; torque spanner; click wrench
says-torque-wrench = A wrench that says when the set torque is reached. Best in the middle of its scale, and let down after work.
term-crow-foot = crow-foot adapter; open-end adapter; crowfoot; offset adapter; claw attachment | crow-foot
says-crow-foot = An open jaw put on a wrench’s square to reach a nut on a tube. Pointing forward it lengthens the lever, so the setting is lower.
term-backup-wrench = backup wrench; backing wrench; second wrench; counter-hold | back up the fitting
says-backup-wrench = The wrench that holds the fitting while the nut is turned. Without it the tube twists and cracks.
term-torque = torque; tightening torque; tightening moment
says-torque = Force times lever. It stands for the pull on the threads, which friction and oil change: follow the plate on oiling.
term-eccentric-flaring = eccentric flaring tool; eccentric cone tool
says-eccentric-flaring = A flaring tool whose cone rolls round the tube: it thins the edge less than a plain screw does.
term-manifold = manifold; gauge set; gauge manifold | gauge manifolds
says-manifold = Gauges, valves and hoses in one. Many joints to leak and narrow ways: poor for a deep vacuum.
term-regulator = pressure regulator; regulator; reducing valve
says-regulator = Brings a cylinder’s pressure down to what is set. Nitrogen is never let in without it and a relief behind it: a full cylinder can burst a system.
term-vacuum-gauge = vacuum gauge; micron gauge; electronic vacuum gauge | vacuum gauges
says-vacuum-gauge = Measures what is left under a deep vacuum. Put it far from the pump, behind a valve, upright and clean of oil.
term-core-tool = core removal tool; core remover; core extractor
says-core-tool = A small lock with a valve that takes the core out and puts it back without opening the system.
term-recovery-cylinder = recovery cylinder; recovery tank; reclaim cylinder | recovery cylinders
says-recovery-cylinder = A refillable cylinder for refrigerant taken out. In date, weighed, one kind only, never over its fill limit.
term-recovery = recovery; reclaiming
says-recovery = Taking refrigerant out into a cylinder instead of the air, as the law demands.
term-tare = tare; tare weight; empty weight
says-tare = What the cylinder weighs empty, stamped on its collar (TW).
term-water-capacity = water capacity; WC
says-water-capacity = The mass of water that fills the cylinder, stamped on it: so its volume.

## Pressure and tests.

term-gauge-pressure = gauge pressure; pressure above atmospheric
says-gauge-pressure = Pressure above the air around. Zero in open air, negative under vacuum.
term-absolute-pressure = absolute pressure; pressure above vacuum | absolute
says-absolute-pressure = Pressure from perfect vacuum: gauge pressure plus that of the air. Gas laws and boiling need this one.
term-ps = PS; maximum allowable pressure; design pressure; maximum working pressure
says-ps = The most that a part may bear in service, by plate or design. The test pressure follows from it.
term-strength-test = strength test; proof test; proof pressure test
says-strength-test = A short test well above PS, to see that nothing gives. Keep away while it stands.
term-standing-test = standing pressure test; tightness test; pressure hold; leak test; nitrogen hold; drop test | standing test; hold test
says-standing-test = The system stands closed under nitrogen for hours; its pressure, put right for temperature, must not fall.
term-dry-nitrogen = dry nitrogen; oxygen-free nitrogen; OFN; nitrogen
says-dry-nitrogen = The gas for tests and brazing: inert and dry. It smothers: air the room. Never oxygen, which explodes with oil, nor compressed air.
term-bubble-test = bubble test; soap test; bubble-tested; leak spray
says-bubble-test = Soapy fluid on each joint under pressure: bubbles show where it leaks. Wipe it off afterwards.
term-relief = relief valve; pressure relief; safety valve; relief
says-relief = Opens by itself above its set pressure. It must not be plugged.
term-rated-pressure = rated working pressure; rated pressure; working pressure | rated pressures
says-rated-pressure = What the weakest part bears continuously at its temperature.
term-uncertainty = uncertainty; measurement uncertainty | uncertainties
says-uncertainty = How far a figure may be off, as far as is known.

## Vacuum.

term-evacuation = evacuation; pump-down; pulling a vacuum; vacuum drying; dehydration | pump down; pulled a vacuum
says-evacuation = Drawing out air and moisture with a pump before the refrigerant goes in. Also said of pumping refrigerant into the outdoor unit, which is another thing.
term-deep-vacuum = deep vacuum; high vacuum; hard vacuum
says-deep-vacuum = Below about 500 micron (67 Pa): there water boils even in the cold. Common practice, no source.
term-micron = micron; micrometre of mercury; millitorr; mTorr | microns
says-micron = A pressure of a thousandth of a millimetre of mercury: 0.1333 Pa. Absolute.
term-rise-test = vacuum hold; decay test; rise test; vacuum decay; vacuum rise; blank-off test
says-rise-test = The pump is valved off and the gauge watched. Levelling off is moisture; an even rise is a leak.
term-plateau = plateau; levelling off | levels off; plateaus
says-plateau = Where a rising or falling pressure stands still. Under vacuum usually water that boils.
term-triple-evacuation = triple evacuation; nitrogen break; breaking the vacuum; nitrogen sweep | nitrogen breaks
says-triple-evacuation = Pumping, filling with dry nitrogen, pumping again: it takes moisture along.
term-non-condensables = non-condensables; non-condensable gas; foul gas | noncondensables
says-non-condensables = Air or nitrogen left in the circuit. It gathers in the condenser and raises the pressure.
term-gas-ballast = gas ballast
says-gas-ballast = A valve on the pump that lets in a little air, so that water does not condense in its oil. Shut for the last depth.
term-ultimate-pressure = ultimate pressure; ultimate vacuum; blank-off pressure
says-ultimate-pressure = The lowest that the pump reaches by itself, shut off. Old oil makes it worse.

## Refrigerant and running.

term-superheat = superheat; suction superheat
says-superheat = How far vapour is above its dew temperature. Too little: liquid comes to the compressor.
term-subcooling = subcooling; sub-cooling; undercooling
says-subcooling = How far liquid is below its bubble temperature. It keeps bubbles out of the expansion device.
term-saturation = saturation temperature; boiling temperature; saturated temperature | saturation
says-saturation = Where liquid and vapour stand together at a pressure.
term-bubble-point = bubble temperature; bubble point; bubble line; saturated liquid | bubble
says-bubble-point = Where a liquid begins to boil at its pressure. Subcooling counts from here.
term-dew-temperature = dew temperature; dew line; saturated vapour; saturated vapor
says-dew-temperature = Where the last drop of a refrigerant has boiled off. Superheat counts from here. The dew point of air is its own thing.
term-dew-point = dew point; dew-point temperature
says-dew-point = The temperature to which air must be cooled before water drops out of it.
term-glide = glide; temperature glide
says-glide = The gap between bubble and dew temperature of a blend at one pressure.
term-blend = blend; mixture; zeotropic blend; zeotrope; refrigerant mixture
says-blend = A refrigerant of several substances. With glide it leaks and fills unevenly as vapour: charge it as liquid.
term-expansion-device = expansion device; metering device; expansion valve; throttling device
says-expansion-device = Where liquid under high pressure is let down into the evaporator: a valve or a fixed orifice.
term-fixed-orifice = fixed orifice; piston; flow restrictor; capillary tube; cap tube
says-fixed-orifice = An expansion device that cannot adjust: charge is judged by superheat.
term-flash-gas = flash gas; bubbles in the liquid line; flashing
says-flash-gas = Liquid that boils before the expansion device. It starves the evaporator.
term-compression-ratio = compression ratio; pressure ratio
says-compression-ratio = High over low pressure, both absolute.
term-wet-bulb = wet bulb; wet-bulb temperature | wet-bulb
says-wet-bulb = What a thermometer with a wet wick shows in moving air. It stands for the heat of the air, moisture included.
term-dry-bulb = dry bulb; dry-bulb temperature; air temperature
says-dry-bulb = The ordinary temperature of air.
term-temperature-split = temperature split; air temperature drop; delta T | split
says-temperature-split = How much colder supply air is than return air.
term-sensible-heat = sensible heat; sensible capacity
says-sensible-heat = Heat that changes temperature, not moisture.
term-latent-heat = latent heat; heat of vaporisation; latent capacity | heat of vaporization
says-latent-heat = Heat that turns liquid into vapour, or comes back as it condenses.

## Charge and safety.

term-factory-charge = factory charge; holding charge; pre-charge; nameplate charge; plate charge | precharge
says-factory-charge = What the unit comes with, enough for the length on the plate.
term-adder = adder; additional charge; line charge; extra charge; charge per metre
says-adder = What the plate wants for each metre beyond the length that the factory charge is for.
term-weigh-in = weigh in; charging by weight; weighed charge | weighed in; weighing in
says-weigh-in = Charging by the scale, the sure way where the plate gives a mass.
term-data-plate = plate; nameplate; data plate; rating plate
says-data-plate = What the maker has fixed to the unit. It outranks every default of this page.
term-safety-class = safety class; safety group; safety classification
says-safety-class = A letter for how poisonous (A, B) and a figure for how flammable (1, 2L, 2, 3) a refrigerant is: ISO 817, ANSI/ASHRAE 34.
term-a2l = A2L; mildly flammable; lower flammability | class 2L
says-a2l = Hardly poisonous, burns slowly and is hard to light. It burns all the same: air, no spark, tools made for it.
term-a3 = A3; highly flammable; hydrocarbon refrigerant
says-a3 = Hardly poisonous and burns fiercely, as propane does. Strict limits on the charge; only for those trained for it.
term-lfl = LFL; lower flammability limit; lower flammable limit; LEL; lower explosive limit
says-lfl = The least share of a gas in air that can burn.
term-rcl = RCL; refrigerant concentration limit; practical limit
says-rcl = The most refrigerant in a room’s air from which people can still leave unharmed.
term-gwp = GWP; global warming potential
says-gwp = How much a kilogram warms the climate against one of carbon dioxide, over a hundred years.
term-co2-equivalent = CO₂ equivalent; carbon dioxide equivalent; CO2e | CO2 equivalent; CO₂e
says-co2-equivalent = Charge times GWP: the mass of carbon dioxide that would warm as much.
