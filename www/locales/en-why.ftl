### English, the question at each step of a working and its answer: `why-<step>` and `because-<step>` of `step-<step>`.


## Flare and torque.

why-aim-plate = Why the middle of the plate’s band?
because-aim-plate = The maker knows the nut, so the plate outranks every table. The middle leaves as much room for the wrench’s error above as below.
why-aim-family = Why does a family of nuts have its own band?
because-aim-family = Nuts of one tube size differ in height, cone and thread class, and so in the pull that a torque gives. Too little leaks; too much thins or cracks the flare.
why-aim-overlap = Why only what all families allow?
because-aim-overlap = While the family is unknown, only a torque that suits each of them is safe. Look for the plate’s value: it wins.
why-wrench-setting = Why is the wrench set lower with an adapter?
because-wrench-setting = The wrench clicks at its own head, but an adapter pointing forward lengthens the lever to the nut, so the nut gets more than the scale says. At a right angle the lever stays about as it was. Pull at the middle of the grip, where the length is measured.
why-least-cone = Why must the cone not be too small?
because-least-cone = A small cone gives the nut little copper to press on: it seals badly and may pull out. Too wide, it touches the thread or the nut’s inside and is not pressed where it should be.
why-thread-pitch = Why do we look at the pitch?
because-thread-pitch = Threads that look alike may not be. A nut that binds within the first turns by hand is on the wrong thread or cross-threaded: do not force it.

## Tube.

why-bore = Why twice the wall?
because-bore = A tube is sold by its outside; refrigerant flows inside. One wall stands on each side of the bore.
why-bore-area = Why the area?
because-bore-area = Area times length is what a line holds, and flow over area is its velocity. It grows with the square of the bore, so one size up makes much difference.
why-tube-mass = What is the mass for?
because-tube-mass = For the carrying and the clamps, and as a check: a coil much lighter than this has a thinner wall, and bears less pressure.
why-rated-pressure = Why does a small tube bear more than a large one?
because-rated-pressure = The pressure pulls on the wall in proportion to the diameter, so the same wall bears more on a smaller tube. The least wall and the soft state count, since brazing anneals copper. Hot copper bears less.

## Pressure of gauge and air.

why-gauge-to-absolute = Why add the pressure of the air?
because-gauge-to-absolute = A gauge reads zero in open air, so it shows only what is above it. Gases and boiling follow the whole pressure, from perfect vacuum.
why-absolute-to-gauge = Why take the pressure of the air off again?
because-absolute-to-gauge = The laws of gases speak of absolute pressure; the result must be compared with a gauge, which starts at the air around.
why-standard-pressure = Why does altitude matter?
because-standard-pressure = Higher up there is less air above, so the air presses less: about a tenth less at 900 m. The same gauge reading is then a lower absolute pressure. A barometer read at the place is better still.

## Saturation.

why-bubble-temperature = What is the bubble temperature?
because-bubble-temperature = Where a liquid at this pressure starts to boil. Liquid colder than that is subcooled, so subcooling is counted from here.
why-dew-temperature = What is the dew temperature?
because-dew-temperature = Where the last drop has boiled off at this pressure. Vapour warmer than that is superheated, so superheat is counted from here. In blends it lies above the bubble temperature; the gap is the glide.
why-bubble-pressure = Why does the liquid’s pressure hang on temperature alone?
because-bubble-pressure = With liquid and vapour together at rest, temperature fixes the pressure, however much there is. So a standing pressure does not say how full a cylinder is. A blend’s liquid boils at its bubble line.
why-dew-pressure = Why is the vapour’s pressure lower in a blend?
because-dew-pressure = At one temperature the vapour of a blend starts to condense at a lower pressure than its liquid starts to boil. Charge such blends as liquid, or the parts leave the cylinder in the wrong shares.
why-latent-heat = Why does boiling move so much heat?
because-latent-heat = Changing from liquid to vapour takes far more heat than warming by some kelvins. That is what a refrigerant circulates for. Liquid on the skin boils just as eagerly and freezes it: wear gloves and goggles.
why-superheat = Why do we measure superheat?
because-superheat = It shows that all liquid has boiled before the compressor: liquid is what breaks one. Much superheat means a starved evaporator.
why-vapour-density = Why does density matter?
because-vapour-density = A compressor takes in volume, and mass carries the heat. Thin vapour means less mass with each turn.

## The hold under nitrogen.

why-ideal-gas-hold = Why do we correct for temperature?
because-ideal-gas-hold = Gas shut in a fixed volume loses pressure when it cools, in proportion to absolute temperature: some 0.3 % a kelvin near room temperature. Without the correction a cold night looks like a leak, and a warm morning hides one.
why-real-gas-hold = Why is nitrogen not taken as ideal?
because-real-gas-hold = At test pressure its molecules feel each other and the pressure changes a little more per kelvin. The difference is small, but so is the drop that is looked for.
why-hold-difference = Why compare with the expected reading and not the first?
because-hold-difference = The first reading was taken at another temperature. What is left after the weather is what a leak can have done.
why-test-pressure = Why test above the working pressure?
because-test-pressure = So that a weak joint shows while only nitrogen is inside. Raise it in stages behind a regulator and relief, stand clear, and never use oxygen or compressed air. The plate and the local code say how high.
why-nitrogen-need = Why know the nitrogen beforehand?
because-nitrogen-need = A cylinder gives only down to the pressure that is wanted. It is better known before the climb to the roof whether it will do.
why-pressure-loss-rate = Why a line through all readings?
because-pressure-loss-rate = Two readings carry the full error of both. A line through many averages chance away; a reading that strays weighs little.
why-loss-uncertainty = Why can the error not be averaged away altogether?
because-loss-uncertainty = Chance shrinks with more readings. What is off in the same way each time, such as a thermometer on the wrong spot, stays however often it is read.
why-upper-limit = Why say “no more than”?
because-upper-limit = No test shows that nothing leaks, only that no more leaks than it could have missed. That is what can be signed.
why-least-detectable = Why is there a least loss that shows?
because-least-detectable = A loss smaller than the uncertainty looks like none. Finer gauges, steadier temperature and more time lower that threshold.
why-hold-to-see = Why must a small leak be held longer?
because-hold-to-see = The loss adds up with time while the gauge’s error stays. Twice the time shows half the leak.
why-leak-throughput = Why does the volume come in?
because-leak-throughput = The same leak makes a small system drop fast and a large one slowly. Volume times the rate is the gas that leaves.
why-refrigerant-loss = Why is it another figure for refrigerant?
because-refrigerant-loss = Another pressure drives it, and another viscosity holds it back. The channel is taken as fine and smooth, so this is a size, not a measurement.

## Water and vacuum.

why-boiling-point = Why does water boil in a cold system?
because-boiling-point = Water boils where its vapour pressure equals what presses on it. A pump lowers that pressure until it boils even at room temperature, and the vapour can be drawn off.
why-boiling-pressure = Why does this pressure matter?
because-boiling-pressure = While liquid water is left, the vacuum cannot go far below it: the water boils and feeds the pump. Warm tubes need less vacuum.
why-frost-point = Why is it ice?
because-frost-point = Below 611 Pa there is no stable liquid water. Ice goes straight to vapour, much more slowly, as heat reaches it badly.
why-sublimation-pressure = Why avoid ice in the lines?
because-sublimation-pressure = Ice gives off vapour so slowly that the gauge looks good while water is still there. Break with dry nitrogen, warm the spot, and pull again.
why-hose-conductance = Why is a short, wide hose worth so much?
because-hose-conductance = In deep vacuum few molecules push each other along. Flow then goes with the third to fourth power of the bore and falls with length, so a thin hose throttles the best pump.
why-core-conductance = Why take the valve core out?
because-core-conductance = A core leaves only a narrow ring open, often the tightest place of the way. A removal tool with its own valve takes it out without letting air in.
why-effective-speed = Why is it less than the pump’s speed?
because-effective-speed = Resistances in a row add up, and the slowest one rules. Near its lowest pressure the pump itself slows as well.
why-water-stand = Why does the gauge stand still?
because-water-stand = Boiling water fills the system as fast as the pump empties it. The plateau ends when the water is gone, not when the clock says so.
why-water-gone = Why does a spoonful take so long?
because-water-gone = At the plateau a gram of water becomes some 60 to 200 litres of vapour, and all of it must pass the hose and the pump.
why-pump-down-time = Why does the time not fall in proportion?
because-pump-down-time = With each equal span of time the same share of the gas leaves, not the same amount. The last step to a deep vacuum takes as long as the first, or longer.
why-residual = Why break the vacuum with nitrogen?
because-residual = Each filling thins what was left, and dry gas takes moisture along. Two modest pulls with a break between beat one that is not quite deep.
why-even-rise = Why does an even rise mean a leak?
because-even-rise = Air comes in at the same rate as long as the inside is nearly empty. It does not level off, as water does.
why-levelling = Why does it level off?
because-levelling = Water or gas from oil and walls gives off vapour until its own pressure is reached; then it stops. A high plateau is moisture, a low one is dry and tight.
why-levelling-and-rise = Why can it be both?
because-levelling-and-rise = Moisture bends the curve at first, a leak keeps it rising after. Only a longer hold parts the two.
why-cause = Why a probability?
because-cause = Several laws may fit a few readings. How well each fits, for all its possible figures, says how far each is to be believed; more readings decide.
why-leak-gas = Why multiply by the volume?
because-leak-gas = The gauge shows pressure, not gas. The same inflow raises a small volume faster.

## Air.

why-dew-point = Why does the dew point matter?
because-dew-point = A surface colder than that draws water from the air. So it decides whether a line sweats and how much a coil dries.
why-humidity-ratio = Why water per dry air?
because-humidity-ratio = The dry air stays the same through the coil while water leaves it. So the two sides can be compared.
why-air-enthalpy = Why not temperature alone?
because-air-enthalpy = Vapour in the air carries heat too, and gives it up as it condenses on the coil. Enthalpy counts both.
why-air-density = Why density?
because-air-density = A fan moves volume, and mass carries heat. Hot, moist or high air is thinner: the same flow carries less.
why-dry-air-flow = Why convert to dry air?
because-dry-air-flow = The heat and the water are counted for each kilogram of dry air, so the flow has to be counted alike.
why-sensible-capacity = What is sensible heat?
because-sensible-capacity = What changes the air’s temperature and can be felt. The rest of the coil’s work goes into drying.
why-total-capacity = Why is the total more than the sensible heat?
because-total-capacity = Water that condenses gives up its latent heat as well. On a damp day that is a good part of the capacity.

## Flow and lines.

why-equivalent-length = Why count a bend as length?
because-equivalent-length = A bend stirs the flow and costs pressure. It is put as the straight tube that would cost as much.
why-mass-flow = Where does the flow come from?
because-mass-flow = Each kilogram takes up a known heat in the evaporator. Capacity over that heat is the mass that must flow.
why-velocity = Why look at the velocity?
because-velocity = Too slow and oil stays behind; too fast and it is loud and costs pressure. Between them the line is right.
why-reynolds = What does this number say?
because-reynolds = Whether the flow glides in layers or tumbles. Low is laminar, high is turbulent, and friction follows other laws.
why-friction-laminar = Why is the wall’s roughness no matter here?
because-friction-laminar = In slow flow a still layer covers the wall, and friction comes from the fluid’s own viscosity.
why-friction-transition = Why is it uncertain here?
because-friction-transition = Between laminar and turbulent the flow jumps to and fro. The figure is drawn between the two; do not design for it.
why-friction-turbulent = Why does roughness count?
because-friction-turbulent = Whirls reach the wall and catch on it. Clean drawn copper is smooth; burrs and scale are not, so ream the tube.
why-friction-drop = Why does a small tube cost so much?
because-friction-drop = In turbulent flow the drop falls with about the fifth power of the bore: a tenth less bore is about two thirds more drop.
why-saturation-drop = Why put a pressure drop in kelvins?
because-saturation-drop = The compressor feels the drop as a colder evaporator. In kelvins it compares between refrigerants.
why-static-head = Why does lift matter in the liquid line?
because-static-head = Liquid is heavy, and each metre of climb takes pressure from it. Going down gives it back. Vapour weighs too little to count.
why-flash-margin = Why must some subcooling be left?
because-flash-margin = Where drop and climb have used it up, liquid boils in the line. The expansion device then gets bubbles and the evaporator starves.
why-oil-return = Why must gas rise so fast?
because-oil-return = Oil leaves the compressor with the gas and climbs a riser only if the gas drags it. The least load counts, when the gas is slowest.
why-capacity-ratio = Why does a drop cost capacity?
because-capacity-ratio = The compressor takes in the same volume, but the gas has got thinner on the way. Less mass moves less heat.
why-port-areas = Why compare the areas?
because-port-areas = Several ports feed one line. If it is much narrower than all of them together it holds back; much wider lets oil lie. As the trade looks at it, no source.

## Running.

why-subcooling = Why do we measure subcooling?
because-subcooling = It shows that only liquid reaches the expansion device. Low can mean a short charge; high, too much of it or a restriction. Air side first.
why-difference-uncertainty = Why are the errors squared?
because-difference-uncertainty = Independent errors seldom all point the same way. The root of the squares is what they usually come to; the largest rules, so improve that one.
why-compression-ratio = Why a ratio, and why absolute?
because-compression-ratio = The compressor multiplies pressure. A high ratio heats the gas and wears the machine; with gauge pressures it would be wrong.
why-orifice-rule = Why does the target move with the weather?
because-orifice-rule = A fixed orifice cannot adapt. Moist, warm return air boils more, a hot day pushes more through; so the right superheat shifts. The plate’s chart wins.

## Charge and cylinders.

why-liquid-contents = Why does the small line hold the most?
because-liquid-contents = Liquid is some twenty to a hundred times as dense as the vapour beside it, so the small line decides the adder.
why-vapour-contents = Why count the vapour at all?
because-vapour-contents = It is little, yet a wide long line adds up. It shows how far a rule for the small line alone is off.
why-line-extra = Why add for length?
because-line-extra = The factory charge covers a stated length. Each metre beyond fills with refrigerant that would be missing elsewhere. The plate’s adder wins.
why-line-reduction = Why take off for a short line?
because-line-reduction = Less line holds less, and what is too much fills the condenser. Only if the plate says so: many say nothing is taken off.
why-total-charge = Why does the whole matter, and not only what is added?
because-total-charge = Room limits, labels and reports go by all that is in the circuit.
why-stop-mark = Why a mark on the scale?
because-stop-mark = Nobody reckons well with a valve in the hand. Close a little before: the hose still holds some, and what is in is hard to take out.
why-charged-so-far = Why weigh and not go by pressure?
because-charged-so-far = Pressure hangs on temperature and says little of the mass. What left the cylinder is what went in.
why-cylinder-volume = Why the volume from a mass of water?
because-cylinder-volume = Cylinders are stamped with the water they hold. Water’s density is well known, so the mass gives the volume.
why-fill-by-volume = Why only 80 %?
because-fill-by-volume = Liquid grows as it warms. A cylinder full of liquid has no room: pressure climbs by several bar for each kelvin and it can burst. Never fill above.
why-fill-when-hot = Why look at it hot?
because-fill-when-hot = Some refrigerants grow more than others. A cylinder in a van in the sun may reach 55 °C and must not be full of liquid even then.
why-part-full-when-hot = What does this share say?
because-part-full-when-hot = How much of the cylinder the liquid takes at 55 °C. At 100 % it may burst; the gap below is what keeps it safe.
why-largest-gross = Why the gross mass?
because-largest-gross = A scale shows cylinder and contents together. The stamped tare and the allowed fill make the figure at which to stop.
why-warming-ar4 = Why put it as carbon dioxide?
because-warming-ar4 = It makes gases comparable: a kilogram may warm like two tonnes of carbon dioxide. Laws that name this report count by it.
why-warming-ar5 = Why do the reports differ?
because-warming-ar5 = Lifetimes and the effect of each gas are known better with time. Use the report that the rule names.
why-warming-ar6 = Which report counts?
because-warming-ar6 = The latest is the best known; the law may still name an older one. Over a hundred years in all of them here.

## Rooms.

why-no-room-limit = Why is there a charge without a limit?
because-no-room-limit = So little gas, even all of it, stays well below what can burn in any usual room. The cautions of its class still hold.
why-charge-cap = Why a cap however large the room?
because-charge-cap = Gas does not spread at once, and lies thick near the leak. Beyond the cap the rules ask for more: sensors, ventilation, valves.
why-room-charge = Why does the height of the unit count?
because-room-charge = Nearly all of these gases are heavier than air. Released high they mix as they sink; released at the floor they lie in a layer that can burn.
why-smallest-room = Why ask for the smallest room?
because-smallest-room = The charge is fixed before the rooms are. Count only floor that is open to the unit: a closed door makes a small room.
why-concentration-charge = Why a concentration?
because-concentration-charge = If all of it escapes, a person must still breathe and nothing may burn. Charge over the room’s volume must stay below that limit.

## Insulation.

why-coefficient-still = Why does still air matter?
because-coefficient-still = Still air brings the surface little heat, so it stays colder and sweats sooner. Closed shafts and ceilings are such places.
why-coefficient-moving = Why does a draught help?
because-coefficient-moving = Moving air warms the surface, so it keeps above the dew point with less insulation. Do not count on a draught that may stop.
why-insulation-thickness = Why just this thickness?
because-insulation-thickness = Heat that reaches the outside from the air passes on to the line. At this thickness the outside is just at the dew point; take the next thicker one.
why-surface-temperature = Why look at the outside?
because-surface-temperature = Water forms where the surface is below the dew point, whatever is beneath. Gaps and squeezed spots are colder than this figure.
why-heat-gain = Why care about the heat?
because-heat-gain = What the line takes up does no cooling and thins the gas before the compressor.
