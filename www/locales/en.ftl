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
