# Handing on what is on the screen. Comes with the panel that does it.

hand-on-heading = Hand on to another phone
hand-on-close = Close
hand-on-code = Code of the link; a tap shows it alone
hand-on-code-hint = Turn the brightness up and hold the other phone’s camera over it. A tap shows the code alone.
hand-on-code-sleeps = This screen may go dark meanwhile.
hand-on-code-too-large = No code: { $characters } characters make one so fine that an ordinary camera app does not read it. The link below carries everything.
hand-on-learn = With the working unfolded
hand-on-learn-detail = for somebody who is learning
hand-on-calculation = Whoever opens it sees the same figures, in their own units. Everything is in the link; nothing is sent anywhere.
hand-on-job = Whoever opens it looks at the job first; nothing is stored before they say so. Whoever has the link can read the job.
hand-on-photos = { $count ->
    [one] One photo does not travel
   *[other] { $count } photos do not travel
} in a link, nor in this job’s file; the file of all jobs has them.
hand-on-link = The link, { $characters } characters
hand-on-copy = Copy the link
hand-on-copied = Copied.
hand-on-copy-refused = This browser does not copy by itself: the link is marked, copy it by hand.
hand-on-share = Send the link
hand-on-share-refused = The system did not take it.
hand-on-no-share = This browser has no way to send a link: copy it.
hand-on-from-file = This page was opened from a file: code and link open on no other device by themselves. Hand on the page’s file too, and put there what stands from # on.
hand-on-file = As a file
hand-on-file-save = Save the file
hand-on-file-share = Send the file
hand-on-file-hint = Opened under Jobs, “Open a file”.
hand-on-no-file-share = This browser has no way to send a file: save it, and send it from there.
