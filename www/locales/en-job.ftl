# The job: its stages, its joints, what is open. Comes with the job's screens.

field-job = Job
field-now = Now
field-stage = Stage
field-after = Clock then
field-at = When
field-before = Clock before
field-brazedCouplings = Brazed couplings along the line
field-by = Who answers for it
field-calibrated = Calibrated on
field-caliper = Caliper
field-caption = What it shows
field-clockChanges = Changes of the clock
field-coresOut = Valve cores taken out
field-created = Begun
field-customer = Done for
field-edited = Changed
field-equipment = Equipment
field-evacuation = Evacuation
field-gasLine = Gas line
field-gasValveOpened = Gas valve opened
field-gauge = Pressure gauge
field-hold = Hold
field-holdBegins = The hold begins here
field-id = Id
field-indoorPorts = Ports of the indoor unit
field-instruments = Instruments
field-joints = Joints
field-kind = Kind
field-leakLook = Look for leaks
field-lines = Lines
field-liquidValveOpened = Liquid valve opened
field-looked = Looked at
field-made = Flared, or brazed
field-mayHaveSlept = The device may have slept
field-note = Note
field-notes = Notes
field-oiled = Oil on thread and faces
field-order = Order
field-outdoorPorts = Ports of the outdoor unit
field-overrides = Done against the order
field-packed = In the van
field-photos = Photos
field-plate = Plate
field-practice = A job to practise on
field-pressureTest = Pressure test
field-pumpStarted = Pump started
field-reason = Reason
field-release = Release and charge
field-remade = Made anew
field-removed = Taken out
field-resolution = Smallest step
field-role = As
field-roomRule = Rule for the room
field-runCheck = Run check
field-scale = Scale
field-scaleTorque = Torque on the wrench's scale
field-signOffs = Names
field-site = Place
field-technician = Technician
field-test = Test
field-thermometer = Thermometer
field-tightened = Tightened
field-uncertainty = May be off by
field-unions = Flare unions along the line
field-vacuumGauge = Vacuum gauge
field-valvedOff = Pump valved off
field-version = Document version
field-words = Search
field-withAdapter = With the offset adapter
field-wrench = Torque wrench

problem-newer-version = This job was written by a later version of Coldwright (document version { $found }, known here: { $known }). Update, then open it again; nothing in it was changed.

stage-plan = Plan
stage-flare = Flare
stage-tighten = Tighten
stage-pressure-test = Pressure test
stage-evacuate = Evacuate
stage-release-and-charge = Release and charge
stage-run-check = Run check
stage-record = Record

stage-state-not-begun = not begun
stage-state-under-way = under way
stage-state-in-band = done, inside the limits
stage-state-cannot-tell = cannot tell
stage-state-out-of-band = outside the limits
stage-state-overridden = done against the order, answered for

open-field = Not entered: { $field }
open-room = No room is entered: the largest charge is not known
open-joints-to-make = Joints not made: { $count }
open-cones-to-measure = Cones not measured: { $count }
open-joints-to-remake = Joints to make anew: { $count }
open-joints-to-oil = Joints without oil: { $count }
open-joints-to-tighten = Joints not tightened: { $count }
open-torques-to-record = Joints tightened without a torque: { $count }
open-joints-to-look-at = Joints not looked at under pressure: { $count }
open-hold-on = The hold has to go on
open-test-pressure = The hold stood below the test pressure: raise it and begin the hold anew
open-readings = The hold needs readings
open-pump-down = The pump has not run
open-open-valves = The valves are not both open
open-caps-to-look-at = Caps not on and looked at: { $count }
open-pressure-after-release = The pressure after release is not read
open-charge = The charge by the scale is not complete
open-run-readings = The running unit is not read
open-calibration = Instruments with no calibration in the last year: { $count }
open-sign-off = No name stands under the record
open-stages = Stages with something open: { $count }

fact-total-charge = Charge in all
fact-largest-charge = Most the room allows
fact-length = Line length
fact-lift = Lift
fact-held = Held for
fact-pressure-difference = Against what was expected
fact-vacuum-level = Level reached
fact-charged-so-far = By the scale
fact-pressure-after-release = Pressure after release
fact-superheat = Superheat
fact-subcooling = Subcooling
fact-temperature-split = Temperature split
fact-least-torque = from
fact-most-torque = to
fact-nut = across flats
fact-tube = tube
fact-nitrogen-mass = nitrogen
fact-nitrogen-free-gas = as free gas
fact-cylinder-left = left in the cylinder
fact-to-add = to add
fact-to-take-out = to take out

rule-pressure-before-tightened = Under test pressure with a joint that is not tightened
rule-above-lowest-rating = Pressure above the rating of the lowest-rated part
rule-pump-before-tight = The pump ran before the hold proved the circuit tight
rule-release-before-tight = Refrigerant released before the hold proved the circuit tight
rule-release-before-dry = Refrigerant released before the vacuum hold passed
rule-release-before-look = Refrigerant released with a joint that leaks, is outside its band or was not looked at
rule-charge-above-room-limit = More refrigerant than the room allows
rule-gas-valve-first = Gas valve opened before the liquid valve

joint-kind-flare = Flare
joint-kind-brazed = Brazed
joint-kind-cap = Cap
joint-line-liquid-line = Liquid line
joint-line-gas-line = Gas line
joint-place-indoor-port = indoor port
joint-place-indoor-adapter = adapter at the indoor port
joint-place-indoor-junction = junction at the indoor unit
joint-place-union-indoor-side = union, indoor side
joint-place-union-outdoor-side = union, outdoor side
joint-place-coupling = coupling
joint-place-outdoor-junction = junction at the outdoor unit
joint-place-outdoor-adapter = adapter at the outdoor port
joint-place-outdoor-port = outdoor port
joint-place-valve-cap = valve cap
joint-place-service-port-cap = service port cap
joint-place-own = added joint
joint-state-open = open
joint-state-made = made
joint-state-tightened = tightened
joint-state-proven = no leak found
joint-state-leaking = leaks
joint-state-out-of-band = outside its band
joint-state-removed = taken out
joint-step-make = make it
joint-step-measure-cone = measure the cone
joint-step-oil = oil it
joint-step-tighten = tighten it
joint-step-look-for-leaks = look for leaks
joint-step-remake = make it anew
leak-look-pass = no leak
leak-look-leak = leak

clock-doubt-clock-went-back = The clock of this device was set back while the job was closed. The time that passed is doubtful.
clock-doubt-clock-jumped-ahead = The clock of this device jumped ahead while the job was open: it was set, or the device slept. The time that passed is doubtful.

bring-torque-wrench = Torque wrench
bring-nut-wrench = Open-ended attachment and back-up wrench
bring-hex-keys = Hex keys, 4 and 5 mm (5/32 and 3/16 in)
bring-service-port-adapter = Adapter for a 5/16 in service port
bring-flaring-tool = Flaring tool, tube cutter, deburrer
bring-caliper = Caliper
bring-oil = Oil for threads and faces
bring-nitrogen = Nitrogen, dry
bring-regulator = Regulator with relief valve
bring-leak-solution = Leak solution
bring-gauges = Pressure gauge and thermometer
bring-vacuum-pump = Vacuum pump and vacuum gauge
bring-hoses = Wide hoses, tools to take out valve cores
bring-refrigerant-cylinder = Refrigerant cylinder
bring-scale = Scale
bring-recovery-cylinder = Recovery cylinder
bring-tube = Tube
bring-insulation = Insulation
bring-brazing = Torch and filler; nitrogen to flow while brazing
bring-protection = Eye protection and gloves
bring-flammable-gear = Fire extinguisher and leak detector for flammable refrigerant

job-absent = There is no such job on this phone.
job-unreadable-not-a-document = What is stored of this job is no job.
job-unreadable-no-document = Nothing is stored of this job.
job-unreadable-bad-edit = A step of this job's history cannot be read.
job-unreadable-newer = A newer version of this page has written this job. Update first.
job-unreadable-out-of-reach = The storage does not give this job just now.
job-next = Next: { $stage }
fact-told = { $fact } { $figure }
fact-uncertain = { $figure } ± { $uncertainty }
joint-named = { $line }, { $place }
joint-counted = { $place } { $count }

# The list of jobs, where they are kept, and as files.

intro-jobs = One record from the plate to the signature. Nothing is sent.
jobs-new = New job
jobs-practice = Practice job
jobs-unnamed = Job without a name
jobs-empty = No job yet. Begin a new one, or look around in the practice job: complete, invented, with faults to find.
jobs-count = { $count ->
    [one] 1 job
   *[other] { $count } jobs
}, the last edited first
jobs-found = { $count ->
    [0] No job has these words in its name, state, place or customer
    [one] 1 job found
   *[other] { $count } jobs found
}
jobs-more = Show more ({ $count })
jobs-actions = What to do with { $name }
jobs-duplicate = Duplicate as template
jobs-duplicate-hint = The copy keeps plate, lines, rooms and instruments. It has no readings, no records of joints, no notes, photos or names under it.
jobs-copy-named = Copy of { $name }
jobs-delete = Delete
jobs-deleted = Deleted: { $name }
jobs-put-back = Put back
jobs-removed = Deleted jobs ({ $count })
jobs-removed-hint = They can be put back for 30 days.
jobs-deleted-at = Deleted { $at }
jobs-delete-for-good = Delete for good
jobs-delete-asked = This cannot be taken back. Delete it with its photos?
jobs-delete-surely = Yes, delete for good
jobs-delete-not = No, leave it
jobs-unreadable-hint = Nothing of it is lost: save what is stored, it can be looked into.
jobs-save-raw = Save what is stored

jobs-kept-granted = Jobs are kept on this phone, and the browser has promised not to clear them.
jobs-kept-not-asked = Jobs are kept on this phone.
jobs-kept-refused = Jobs are kept on this phone, but the browser may clear them when it wants space. Put this page on the home screen, and save a backup from time to time.
jobs-kept-by-file = This page is a file: the browser may show what it stores for it to other files on this device, and loses it if the file is moved. Save the jobs to a file at the end of the day.
jobs-in-memory-private = This window keeps nothing: jobs last until it is closed. Save them to a file, or open the page in an ordinary window.
jobs-in-memory-refused = This browser refuses storage: jobs last until the page is closed. Save them to a file, or allow this page to store in the browser’s settings.
jobs-in-memory-blocked = Another window holds an older version of this page. Close or reload it; until then jobs are kept in memory only.
jobs-in-memory-newer = A newer version of this page has stored here. Reload; until then jobs are kept in memory only.
jobs-in-memory-full = The storage of this phone is full: what is new is kept in memory only. Save it to a file, then make space: delete jobs for good, or other things on the phone.
jobs-in-memory-failed = The storage of this phone does not answer: jobs are kept in memory only. Save them to a file. Writing is tried again and again.
jobs-unsaved = Not on this phone yet: { $count ->
    [one] 1 edit
   *[other] { $count } edits
}

files-heading = Backup
files-hint = All jobs with their photos in one file, to be kept elsewhere. A backup, or the file of one job, is opened here; what it would change is shown first.
files-backup = Save all jobs to a file
files-open = Open a file
files-saved = Saved. Look among the downloads.
files-taken = Taken over.
files-failed = The file could not be made. Try again; jobs stay as they are.
files-unreadable = This file cannot be read.
files-not-a-backup = This is no backup and no job, or it was cut off. Nothing was changed.
files-newer = A newer version of this page has written this file. Update first. Nothing was changed.
files-made = File of { $made }
files-no-jobs = No job is in it
files-count-new = new: { $count }
files-count-removed = deleted here: { $count }
files-count-differs = differing: { $count }
files-count-same = the same: { $count }
files-count-refused = not to be read: { $count }
files-broken = Jobs and photos in the file that cannot be read: { $count }. They are left alone.
files-more-new = and { $count } more that are not on this phone; they are taken too
files-refused-newer = A later version of Coldwright has written this job. Update first.
files-refused-broken = This job cannot be read.
files-standing-new = Not on this phone; edited { $edited }
files-standing-removed = Edited { $edited }
files-standing-differs = Edited { $edited }
files-standing-same = The same
files-standing-refused = Edited { $edited }
files-standing-both-new = Edited { $edited }
files-standing-both-removed = Deleted on this phone. In the file edited { $edited }, here { $mine }
files-standing-both-differs = In the file edited { $edited }, here { $mine }
files-standing-both-same = The same
files-standing-both-refused = In the file edited { $edited }, here { $mine }
files-choice = What to do
files-choice-leave = Leave mine
files-choice-take = Take theirs
files-choice-by-field = Choose by field
files-choice-take-new = Take it
files-choice-leave-new = Leave it out
files-mine = here
files-theirs = { $from ->
    [link] in the link
   *[file] in the file
}
files-added = is added: nothing stands here
files-take = Take over ({ $count })
files-leave = Leave everything as it is

place-within = { $outer }: { $inner }
place-number = no. { $number }
place-item = entry
member-text = Words
place-nothing = nothing
place-entries = { $count ->
    [one] 1 entry
   *[other] { $count } entries
}
place-more = { $texts }; …

glance-stage = { $stage } { $state }
glance-next = next: { $stage }
glance-all-done = every stage is done

# The head of a job.

job-undo = Undo
job-redo = Redo
step-places = { $place } and { $count } more
job-kept = Kept on this phone
job-being-kept = Being kept …
job-unsaved = Not on this phone yet: { $count }
job-names = Name, place, people
job-save-file = Save this job to a file
job-save-file-hint = One file, without photos. Open it on another phone under Jobs, Backup.
clash-heading = Also changed in another window
clash-mine = you wrote
clash-theirs = the other window wrote
clash-standing = stands now
clash-take-mine = Take mine
clash-take-theirs = Take the other
clash-leave = Leave what stands

# What a new job begins with, in the settings.

defaults-heading = A new job begins with
defaults-hint = Wrench and adapter from above, and these. Each job can have its own; a change here changes no job that is there.
field-ownGaugeResolution = Smallest step of your pressure gauge
field-ownGaugeUncertainty = Pressure gauge may be off by
field-ownThermometerUncertainty = Thermometer may be off by
field-ownVacuumGaugeResolution = Smallest step of your vacuum gauge
field-ownScaleResolution = Smallest step of your scale
# The drawing of the circuit and the overview.

circuit-drawing = Drawing of the circuit. { $caption } { $joints } joints: { $states }.
circuit-joint = Joint { $number }: { $joint }, { $state }
circuit-count = { $count } { $state }
circuit-length = { $length } of line
circuit-no-length = length not entered
circuit-no-lift = lift not entered
circuit-level = both units level
circuit-indoor-higher = indoor unit { $lift } higher
circuit-outdoor-higher = outdoor unit { $lift } higher
circuit-liquid = liquid line { $tube }
circuit-gas = gas line { $tube }
circuit-not-to-scale = The lift is not to scale.
stage-next = comes next
stage-short-not-begun = not begun
stage-short-under-way = under way
stage-short-in-band = in band
stage-short-cannot-tell = cannot tell
stage-short-out-of-band = out
stage-short-overridden = answered for
stage-more = { $count } more
still-open = Still open
job-previous = Back: { $stage }
job-problems-elsewhere = These are entered on other screens, or further up.
alarms = Against the order of work
alarm-answer = I answer for it
alarm-answered-for = { $by } answers for it
alarm-answered = “{ $reason }”: { $by } answers for it, { $at }.
alarm-hint = It stays loud until a reason and a name are here.
alarm-withdraw = Withdraw
note-add = Add a note
note-take-out = Take this note out
note-of = Note, { $at }

# The usual cautions of each stage.

caution-plan = Plate, local code and licence decide
caution-plan-licence = The equipment’s instructions and local code outrank every figure here. Work for licensed and trained persons.
caution-plan-plate = Read the plate at the unit itself: a figure taken from another model can hurt.
caution-plan-flammable = Class A2L, A2 or A3 burns: room, charge and ignition sources are settled before the first hole is drilled.
caution-plan-electricity = Live parts: isolation and wiring belong to a licensed electrician.
caution-flare = Eyes, sharp edges, nothing under pressure
caution-flare-licence = The equipment’s instructions and local code come first, and so does licensed practice.
caution-flare-eyes = Eye protection: chips and burrs fly. Cut tube is sharp.
caution-flare-nitrogen = Where joints are brazed, dry nitrogen flows through the tube from a regulator, never oxygen, never compressed air; nothing that burns nearby.
caution-flare-flammable = Never cut, open or heat a circuit that holds refrigerant.
caution-tighten = Back up the fitting
caution-tighten-licence = The torque in the equipment’s instructions outranks every table here, and so do local code and licensed practice.
caution-tighten-back-up = Hold the fitting still with a second wrench, or the tube twists and tears.
caution-tighten-torque = Oil for this refrigerant on thread and faces, where the instructions ask for it. Never oil near oxygen.
caution-tighten-pressure = Never turn a nut on a joint under pressure.
caution-pressure-test = Dry nitrogen, regulator, relief valve
caution-pressure-test-licence = The plate’s test pressure and the equipment’s instructions win, and so do local code and licensed practice.
caution-pressure-test-nitrogen = Dry nitrogen only. Never oxygen: with oil it explodes. Never compressed air.
caution-pressure-test-regulator = Through a regulator, with a relief valve set no higher than the lowest-rated part bears.
caution-pressure-test-stages = Up by stages, looking and listening at each. Close off what is not made for the pressure.
caution-pressure-test-eyes = Eye protection on, nobody over a joint. Never tighten what is under pressure.
caution-pressure-test-release = Let it out slowly and into moving air: in a small room nitrogen takes the air’s place.
caution-evacuate = Power off; the compressor stands still
caution-evacuate-licence = The equipment’s instructions, local code and licensed practice win.
caution-evacuate-electricity = Unit off and locked: its compressor must never run, or be under voltage, in a vacuum.
caution-evacuate-pressure = Nitrogen out first, slowly: pump and gauge bear no pressure.
caution-evacuate-flammable = With a flammable refrigerant near: no spark, a pump meant for it.
caution-evacuate-oil-mist = The pump blows out oil mist: let it out into moving air.
caution-release-and-charge = Cold burns, air to breathe, nothing that ignites
caution-release-and-charge-licence = Only licensed persons handle refrigerant. The equipment’s instructions and local code win.
caution-release-and-charge-cold = Liquid refrigerant freezes skin and eyes: gloves, eye protection.
caution-release-and-charge-flammable = Class A2L, A2 or A3 burns: no flame, spark or hot surface; tools and cylinder made for it; a detector on the floor.
caution-release-and-charge-air = Ventilate: heavy gas gathers low and takes the air’s place.
caution-release-and-charge-cylinder = Never heat a cylinder with a flame, never fill one above 80 % of its volume.
caution-run-check = Live parts, moving parts, hot parts
caution-run-check-licence = The equipment’s instructions, local code and licensed practice win.
caution-run-check-electricity = Covers stay on where they can: measurements inside belong to a licensed electrician.
caution-run-check-moving = Fans start without warning: hands, hoses and sleeves away.
caution-run-check-hot = The discharge line burns skin.
caution-record = What stays open is told to the owner
caution-record-licence = This record replaces no certificate that local code asks for.
caution-record-handover = Hand over what is open, and what must be looked at again.

# The plan.

plan-charge = Charge in all
plan-to-add = to add
plan-to-take-out = to take out
plan-empty = Enter the plate and the lines: charge, room and bring list follow.
plan-room = Room
plan-room-open = no room entered, or no charge
plan-limits = Against the plate
plan-limit-length = Line length, { $figure } of { $limit }
plan-limit-lift = Lift, { $figure } of { $limit }
plan-limit-liquidLine = Liquid line bears { $figure }, wanted { $limit }
plan-limit-gasLine = Gas line bears { $figure }, wanted { $limit }
plan-no-limits = The plate’s longest line, largest lift and design pressure are held against the lines once both are entered.
plan-tube-temperature = Tubes at 66 °C (150 °F).
plan-more-plate = More from the plate
plan-port = Port
plan-port-numbered = Port { $number }
plan-ports = Ports of another size, or several
plan-indoor-ports = Ports of the indoor unit
plan-outdoor-ports = Ports of the outdoor unit
plan-ports-hint = Leave empty where each unit has one port of the line’s own size. One port of another size takes an adapter; several are joined into the line.
plan-add-port = Add a port
plan-take-out = Take { $what } out
plan-add-room = Add a room
plan-room-numbered = Room { $number }
plan-add-accessory = Add an accessory
plan-accessory-numbered = Accessory { $number }
plan-air = Air around: altitude or barometer
plan-cards = On their own cards, with these figures
plan-to-line-set = Line set
plan-to-insulation = Insulation of the gas line
plan-name = The job
plan-calibrated-hint = a year counts as due: common practice, no source
bring = Bring
bring-packed = { $packed } of { $all } in the van
bring-practice = common practice, no source
bring-range = { $low } to { $high }
bring-nitrogen-needs = What the nitrogen figure needs
bring-print = Print the list
bring-empty = Enter tubes and refrigerant for figures.
# Joint by joint: cones, nuts, the list, the look for leaks.


joints-none = No joint is here: enter the lines in the plan, or add a joint below.
joints-progress = { $place } of { $count } · { $done } done
joints-not-here = Not part of this stage
joint-kind-and-tube = { $kind }, { $tube }
joints-earlier = Back
joints-later = Next
joints-no-earlier = the first
joints-no-later = the last
joints-cone = Cone, across the rim
joints-no-refrigerant = The cone depends on the refrigerant: enter it in the plan.
joints-no-cone = No table has a cone for this tube: take it from the equipment’s instructions.
joints-no-tube = The tube of this line is not entered.
joints-to-plan = To the plan
joints-not-told = not known
joints-tool-open = Which flaring tool?
joints-tool = Flaring tool: { $tool }
joints-flare-more = Thread, angle, working
joints-braze = Braze this joint. Let dry nitrogen flow through the tube while it is hot, or scale forms inside.
joints-cap-no-cone = A cap has no cone. It comes in the stage Tighten.
joints-brazed-no-nut = A brazed joint has no nut: nothing is to be tightened here.
joints-cap-on = Put the cap on with its seal clean. No torque is known for it here: the equipment’s instructions may give one.
joints-act-flared = Flared
joints-act-brazed = Brazed
joints-act-tightened = Tightened
joints-act-tightened-to = Tightened: { $torque }
joints-act-cap-on = Put on
joints-flared-at = Flared, { $at }
joints-brazed-at = Brazed, { $at }
joints-tightened-at = Tightened, { $at }
joints-cap-on-at = Put on, { $at }
joints-take-back = take back
joints-remake = Make it anew
joints-must-remake = It has to be made anew
joints-act-remake = Make it anew
joints-remake-keeps = What was measured stays in the record as an earlier attempt; the joint is open again.
joints-usual-reasons = Usual reasons
joints-reason-narrow = Cone too narrow
joints-reason-wide = Cone too wide
joints-reason-cracked = Rim cracked
joints-reason-scored = Face scored
joints-reason-leaks = It leaked
joints-reason-over-torque = Tightened too far
joints-attempts = Earlier attempts
joints-cone-then = cone { $cone }
joints-torque-then = torque { $torque }
joints-at-nut = At the nut
joints-gives = gives { $aim } at the nut
joints-straight = the nut gets the same
joints-no-torque = No torque is known for this tube: enter the plate’s below.
joints-no-lever = The adapter changes the setting: enter its length and the wrench’s below.
joints-turn = turn the nut
joints-turn-nut = turn the nut, { $nut }
joints-two-wrenches = Two wrenches, seen along the tube: the one on the nut turns clockwise towards the other one, which holds the fitting still.
joints-torque-open = Not recorded.
joints-nut-got = { $torque } at the nut
joints-wrench = Wrench and adapter
joints-whose-band = Whose band, torque on the plate
joints-list = Joints in the order of work
joints-remade = made anew: { $count }
joints-still = still to do: { $steps }
joints-change = Change
joints-add = Add a joint
joints-add-after = Add a joint after: { $joint }
joints-move-earlier = Earlier
joints-move-later = Later
joints-take-out = Take out
joints-put-back = Put back
joints-caution-cutting = Eye protection and gloves: cut tube has sharp edges. Keep swarf out of the tube.
leak-look-of = { $joint }: leak?
leak-look-short = Leak?
leak-look-open = not looked at
leak-looked-at = Looked at { $at }
leak-remake = It leaks: let the pressure off before anything is touched. Tighten within the band or make it anew.
leak-cap = It leaks: clean the seal, put the cap on again, look again.
leak-to-joint = To the joint

# Photos.

photos-heading = Photos
photos-take = Take a photo
photos-choose = Choose pictures
photos-take-out = Take this photo out
photos-unreadable = This is no picture that can be read: { $name }
photos-absent = This photo is not on this phone. It is where the job was first kept, or in its backup.
photos-unnamed = Photo without a caption

# Release and charge.

release-before = Before a valve is opened
release-not-yet = Do not open a valve yet
release-opened-without = A valve was opened without this
release-no-joints = No joint is entered: there is nothing to look at yet
release-tight = Tight: the hold proved it { $at }
release-not-tight = Not proven tight under pressure
release-looked = Every joint made, inside its band and looked at
release-not-looked = { $count ->
    [one] { $count } joint leaks, is outside its band or was not looked at
   *[other] { $count } joints leak, are outside their band or were not looked at
}
release-dry = Dry: the vacuum hold passed { $at }
release-not-dry = Not shown dry: no vacuum hold has passed
release-above-room = More refrigerant than the room allows
release-to-stage = To { $stage }
release-valves = Valves
release-valves-how = Liquid valve first, then the gas valve. Hex key, mostly 4 mm or 5 mm (5/32 or 3/16 in): counter-clockwise to the stop, without force.
release-valves-note = Key sizes and order: common practice, no source; the plate and the instructions outrank it. A quarter turn of the liquid valve first lets the pressure rise slowly.
release-open-liquid = Liquid valve is open
release-open-gas = Gas valve is open
release-opened-liquid = Liquid valve opened { $at }
release-opened-gas = Gas valve opened { $at }
release-after = Pressure after release
release-after-empty = Enter the temperature of the air around the units: what the gauge should show follows.
release-ambient = Air around the units
release-ambient-hint = In the shade, where the units have stood.
release-gauge = Gauge reading, unit standing
release-from = should show from
release-to = to
release-reads = the gauge shows
release-not-read = Not read yet
release-expected = At { $temperature } the refrigerant stands at { $band } as long as the unit has not run.
release-too-low = Too low: a valve is not open, refrigerant is missing, or the unit is colder than the air.
release-too-high = Too high: air or nitrogen is in the circuit, the unit is warmer than the air, or it is another refrigerant.
release-caps = Caps
release-caps-how = A cap is a seal: clean, oil, screw on, then look for leaks at each.
release-charge = Charge by the scale
release-leaves-as = Leaves the cylinder as
release-liquid-only = liquid only
release-either = liquid or vapour
charge-remaining = Still to move

# Run check.

run-check-readings = Readings of the running unit
run-check-read = Read now
run-check-read-at = Read { $at }
run-check-more = Discharge pressure, usual bands
run-check-more-note = Gauge and thermometer come from the job’s instruments, refrigerant and altitude from its plan.

# The record.

record-title = Refrigerant tubing record
record-practice = · PRACTICE, invented data
record-edition = Coldwright { $build }, tables { $core }; written { $at }.
record-schema = Schema of the document: { $address }
record-schema-note = For other programs: what the job’s file holds, and in which units, is written at
record-nothing-open = Nothing is left open
record-left-open = { $count ->
    [one] Left open or wrong in one stage
   *[other] Left open or wrong in { $count } stages
}
record-problems = { $count ->
    [one] One entry cannot be read or does not serve.
   *[other] { $count } entries cannot be read or do not serve.
}
record-unanswered = { $rule }; nobody answers for it
record-found = Found
record-entered = Entered
record-place = Place and rule
record-lines = Lines
record-lines-run = { $length }, lift { $lift }; liquid and gas { $tubes }
record-charge-sum = { $total }: factory { $factory }, line { $line }
record-hold = Nitrogen hold
record-hold-figure = { $duration }; shows { $measured }, tight it would show { $expected }: { $difference } apart
record-pumped = Pump
record-pumped-for = { $time } from { $at }
record-vacuum = Vacuum hold
record-vacuum-figure = { $level } ± { $uncertainty } after { $time }
record-pass = Rule for it
record-pass-figure = { $level }, at most { $limit } over { $time }
record-not-opened = not opened
record-valves = liquid { $liquid }, gas { $gas }
record-after-release = { $pressure }; should be { $band } at { $temperature }
record-to-add = to add { $mass }
record-to-take-out = to take out { $mass }
record-charged = { $mass } moved
record-remaining = { $mass } to go
record-needs-target = not judged: no target is entered
record-should-be = should be { $band }
record-column-number = No.
record-column-joint = Joint
record-column-tube = Tube
record-column-cone = Cone
record-column-torque = Torque at the nut
record-column-leaks = Leaks
record-margin-in-band = { $margin } inside
record-margin-cannot-tell = { $margin } from the limit: cannot tell
record-margin-out-of-band = OUT by { $margin }
record-not-done = not done
record-cap-on = on
record-attempts = Made anew, and notes on joints
record-attempt = Joint { $number }, { $at }: { $reason }
record-joint-note = Joint { $number }: { $note }
record-pressures = Readings of the pressure hold: { $count }
record-vacuums = Readings of the evacuation: { $count }
record-readings-left = { $count } earlier ones are in the file of readings.
record-no-time = no time
record-unreadable = unreadable
record-doubtful = clock doubtful
record-air = air { $temperature }
record-hold-begins = hold begins
record-pump-on = pump on
record-valved-off = pump valved off
record-vacuum-drawing = { $count } readings of the vacuum gauge over time, pump first and then the hold, the last level { $level }.
record-resolution = steps of { $figure }
record-uncertainty = ± { $figure }
record-wrenchRange = { $figure }
record-wrenchAccuracy = ± { $figure }
record-adapterLength = adapter { $figure }
record-calibrated = calibrated { $day }
record-not-calibrated = no calibration entered
record-notes = Against the order, clock, notes
record-override = { $rule }: { $reason } ({ $by }, { $at })
record-note = { $stage }, { $at }: { $text }
record-disclaimer = A record of what was entered, and of what follows from it by the sources named in Coldwright. No substitute for the equipment’s instructions, local code or licensed practice.
record-names = Names under the record
record-sign-name = Name
record-done-by = done by
record-received-by = received by
record-date = date
record-sign = Sign now
record-signed = Signed { $at }
record-add-name = Put a name under it
record-add-another = One more name
record-take-out-name = Take this name out
record-print = Print the record
record-save-json = Save this job (JSON)
record-save-readings = Readings (CSV)
record-save-joints = Joints (CSV)
# The drawing of the circuit and the overview.

# The holds: clocks, readings, what the phone can and cannot do.
clock-pressureClock = Pressure hold
clock-pumpClock = Pump
clock-vacuumClock = Vacuum hold
clock-since = since { $moment }
clock-to-go = At least { $lasts }: { $remaining } to go, until { $due }.
clock-over = Its { $lasts } are over.
clock-pressure-ended = The pressure hold has ended: the pump has run since.
clock-vacuum-ended = The vacuum hold has ended: a valve was opened since.
waking-awake = The screen stays awake while the clock runs.
waking-asleep = The screen is kept awake as soon as this page is looked at.
waking-refused = The phone refuses to keep the screen awake, perhaps to save the battery. The clock stays right.
waking-not-offered = This browser cannot keep the screen awake. The clock stays right when it goes dark.
ring-ask = Ring when it is over
ring-granted = Rings, and shows a notice of the phone.
ring-denied = Rings here; this browser allows no notice.
ring-default = Rings here; no notice was allowed.
ring-not-offered = Rings here; this browser has no notices.
ring-limits = A closed page cannot ring, and a phone that sleeps may ring late. To be sure set an alarm as well: { $due }.
ring-over = The time of the hold is over: read the gauge.
reading-next = Next reading
reading-gauge = Gauge
reading-vacuum = Vacuum gauge
reading-take = Read now
reading-hint = What was read last stands ready. Set what has changed, then Read now: the time goes with it.
reading-kept = Kept at { $time }: { $texts }
reading-steps = { $field }, steps
reading-begins-detail = Gas was let in or out, or a joint was made anew
reading-valve = The pump
reading-before-hold = before this hold
reading-rows = Readings { $from } to { $to }:
reading-row = Reading { $row }, { $time }, { $pressure }:
reading-take-out = Take reading { $number } out
valved-off-false = pump running
valved-off-true = valved off
readings-count = { $count ->
    [0] No readings yet
    [one] One reading
   *[other] { $count } readings
}
readings-paste-hint = One row a line: { $names }. The time as 2026-11-25 18:40, or 18:40 alone for the last day. Semicolons, tabs or blanks between them.
rows-paste-no-time = Line { $line } has no time such as 18:40: “{ $text }”
pressure-test-empty = With the design pressure of the plate: the test pressure and the way up to it. With readings: weather or leak.
pressure-test-looks = Each joint under the soap
pressure-test-looks-note = Soap it all around, wait a minute, look from every side.
evacuate-pump = Pump
evacuate-pump-now = The pump draws now
evacuate-pump-again = The pump draws again, from now
evacuate-cores-detail = Their bore holds the pump back most

# A job as a link.
link-problem-not-a-link = This link holds no job. Ask for it again, or for the file.
link-problem-damaged = This link was cut off or changed on its way. Ask for it again, or for the file.
link-problem-newer-version = A newer version of this page has written this link ({ $found }; this page reads up to { $known }). Update first.
link-problem-too-large = { $characters } characters are more than a link may have ({ $most }). Send the file instead.
link-problem-beyond-bounds = This document is larger than any job.
link-problem-not-a-document = This is no document of a job.

## A job that was handed on by a link

handed-intro = Handed on by a link, to be looked at. Nothing on this phone changes until you say so.
handed-nothing-kept = Nothing was stored.
handed-keep = Keep this job
handed-here = This job is on this phone already.
handed-keep-copy = Keep it beside mine
handed-compare = Compare with
handed-compare-none = none
handed-open-mine = Open the one here
handed-same = The two say the same.
handed-differs = They differ in { $count ->
    [one] one place
   *[other] { $count } places
}. What is only in the link is added; else the one here stays, unless you choose.
handed-merge = Take over ({ $count })
