namespace Lugwork;

/// <summary>The cautions that verdicts carry. Makers' figures, local codes and licensed practice come first.</summary>
internal static partial class Cautions
{
    public static readonly Caution NeverReamToSuit = new("never-ream-to-suit", "Never ream a seat tube or turn down a post to suit: the wall carries the load.");

    public static readonly Caution NeverSpread = new("never-spread", "Never spread an aluminium, carbon or titanium frame; only a steel frame can be cold-set, by a shop that re-aligns the ends.");

    public static readonly Caution Insertion = new("insertion", "Put the post in to its own mark and to the frame maker's figure, whichever is deeper; too little breaks post or frame.");

    public static readonly Caution Rotor = new("rotor-limit", "The frame or fork maker's largest rotor is a limit whatever the adapter sum says; a missing figure is unknown, not unlimited.");

    public static readonly Caution BrakeWork = new("brake-work", "Brake work: follow the brake maker's bolts and torques, and have it checked by a shop if in doubt.");

    public static readonly Caution BrakeHole = new("brake-hole", "Never drill or ream a crown or bridge to take another brake bolt: it can break there. Only a shop, and only where the frame or fork maker allows it; never carbon.");

    public static readonly Caution RimPads = new("rim-pads", "Pads and rim must be made for each other, and a worn track is the end of a rim. The rim maker's own list of pads comes first, on carbon most of all; aluminium chips in a pad ruin a carbon rim.");

    public static readonly Caution FlatMountBolts = new("flat-mount-bolts", "A flat-mount bolt that is too long bottoms in the caliper and feels tight while it holds nothing; one too short strips it. Measure the stay, take the brake maker's length for it, and tighten it to the maker's torque.");

    public static readonly Caution DiscOnOpenEnds = new("disc-on-open-ends", "A disc brake can push the axle towards the mouth of an open slot. The skewer must be tight, of a kind that its maker allows with discs, and retention lips must never be filed off.");

    public static readonly Caution HubGearAxle = new("hub-gear-axle", "A hub gear turns its axle against the ends: the washers that hold it must be the hub maker's for this slot, on both sides. An axle that turns ruins the ends and can let the wheel go.");

    public static readonly Caution Hookless = new("hookless", "Hookless rims take only tyres that their maker allows, at 5 bar or the lowest limit of tyre and rim; the maker's minimum width comes first.");

    public static readonly Caution WideTyre = new("wide-tyre", "The tyre is more than twice as wide as the rim is inside: it squirms at low pressure; stay near the higher pressures both makers allow.");

    public static readonly Caution BeadSeat = new("bead-seat", "A tyre of another bead seat may slip on and still blow off; the second ISO number must be the rim's.");

    public static readonly Caution Axle = new("axle", "A wheel that is not held by its axle comes out. Match axle diameter, thread and length to the frame maker's figures.");

    public static readonly Caution Stopgap = new("stopgap", "A very thin shim creeps and marks the post; use it only until the right post is there.");

    public static readonly Caution SteeringCare = new("steering", "Steering that comes loose or breaks throws the rider. Press, cut and clamp to the makers' figures, and have a shop do it if in doubt.");

    public static readonly Caution BarClampCare = new("bar-clamp", "Never open a clamp to get a larger bar in, and never pull a loose one tight; carbon bars take a shim only where their maker allows it.");

    public static readonly Caution CarbonBar = new("carbon-bar", "A carbon bar cracks where a clamp pinches it, and breaks without bending first. Nothing is clamped on it that its maker does not allow, and nothing tighter than the lower of the two makers' figures.");

    public static readonly Caution AxleThread = new("axle-thread", "A thru-axle must have the frame maker's diameter, pitch, length and thread length; one of another pitch starts, then ruins the thread.");

    public static readonly Caution Rails = new("carbon-rails", "Carbon rails in jaws of another shape are crushed and break; clamp and rails must be made for each other.");

    public static readonly Caution TyreRoom = new("tyre-room", "A tyre that touches fork, frame or mudguard stops the wheel. Tyres grow after fitting and differ by 3 mm from their label: leave 6 mm all round, 4 mm on a racing bicycle, and never less than the maker's figure.");

    public static readonly Caution ChainOff = new("chain", "A chain that jams or jumps can throw the rider; try every gear on the stand before riding.");

    public static readonly Caution BeltCare = new("belt", "A belt must be tensioned and in line to its maker's figures and must never be bent back, twisted or kinked: a slack one jumps, a crimped one tears, and either can throw the rider. The frame needs a way to tension it and the stiffness that the belt's maker asks for.");

    public static readonly Caution ReactionArm = new("reaction-arm", "A hub brake turns its arm against the frame. The arm is clamped or bolted to the fork blade or chain stay with the part made for it and a blade or stay that its maker allows; one that comes loose winds up the cable, locks the wheel and throws the rider.");

    public static readonly Caution ChainTooShort = new("chain-too-short", "A chain too short for the largest ring and sprocket tears the derailleur off, on a suspended frame anywhere in its travel; one too long falls off the smallest. The derailleur maker's figures come first; try both ends by hand before riding.");

    public static readonly Caution ShellThreads = new("shell-threads", "Threaded shells: the drive cup of BSA, Swiss, 26 tpi and T47 is left-hand and tightens anticlockwise; Italian and French are right-hand on both sides, and an Italian drive cup works loose unless it is torqued fully. Count the pitch before turning anything: French measures like BSA. Pressed units go in square, with a press.");

    public static readonly Caution Tapers = new("tapers", "Do not ride a crank on the other taper before it was checked: a JIS arm may bottom on an ISO spindle, an ISO arm holds a JIS spindle by less of its length.");

    public static readonly Caution NeverSleeve = new("never-sleeve", "Never sleeve a spindle by guess: only reducers that are sold for exactly that bearing.");

    public static readonly Caution ThinBearings = new("thin-bearings", "The bearings between a 30 mm spindle and a 41 mm bore are thin and do not last long.");

    public static readonly Caution PedalThreads = new("pedal-threads", "The left pedal has a left-hand thread and goes on the left crank only; a pedal that is forced strips the crank. It must start by hand.");

    public static readonly Caution FreewheelThread = new("freewheel-thread", "A freewheel on a hub of another thread binds, or grips the tops of the thread and slips under load. It must start by hand and turn freely to its shoulder. Threads that are said to exchange strip in an aluminium hub under a tandem or a strong rider.");

    public static readonly Caution PressFitCare = new("press-fit", "Press cups in square, with a press, and set races with a setter. Thin, brittle races want no more than 0.03 to 0.05 mm of interference.");

    public static readonly Caution CarbonSpacers = new("carbon-spacers", "A carbon steerer breaks where the stem levers on it. The fork maker's figure for spacers below and above the stem comes before every rule; support the clamp from inside with the maker's expander, never with a star nut.");

    public static readonly Caution ShockSizeCare = new("shock-size", "A shock of another length or more stroke lets the frame, the tyre or the shock hit something at full travel. The frame maker's length, stroke and mount come first.");

    public static readonly Caution TrunnionLoad = new("trunnion", "A trunnion mount holds its end stiffly: a frame that flexes loads the shock from the side and wears it.");

    public static readonly Caution ForkClassCare = new("fork-class", "A longer or double-crown fork loads the head tube more than it may be made for. The frame maker's largest length, travel and crown come first.");

    public static readonly Caution WheelBuilding = new("wheel-building", "A wheel with wrong or loose spokes collapses. Rim and hub maker's figures for spoke length, lacing and largest tension come first; have a wheel builder check the first one.");

    public static readonly Caution PressureLimit = new("tyre-pressure", "Never inflate above the lowest limit of tyre, rim and, on hookless rims, 5 bar; nor below the tyre's own minimum. What is printed on tyre and rim comes before any table.");

    public static readonly Caution SuspensionSums = new("suspension-sums", "Sums with a mean leverage ratio are a place to start. Let the air out, move the wheel through its whole travel by hand and see that nothing meets; the frame maker's shock and sag figures come first.");

    public static readonly Caution BodyRules = new("body-rules", "Rules of thumb about a body are a place to start, and they disagree. They are no advice against pain or after an injury: that is for a fitter or a doctor.");

    public static readonly Caution GeometryCare = new("geometry", "Fork, wheels, tyres and headset other than the frame maker allows can overload the head tube, hit the frame or the ground, and change how the bicycle steers. The frame maker's limits come first; a missing one is unknown, not unlimited.");

    public static readonly Caution GroundAndToe = new("ground-and-toe", "A pedal that meets the ground or a shoe that meets the tyre throws the rider. The sums are estimates: measure on the bicycle, tilted, and with the wheel turned to both sides.");

    public static readonly Caution RingRanking = new("ring-ranking", "Ranked by the angle of the chain alone: whether ring, bolts and arm clear the chainstay is not judged. Measure the gap, and keep to the frame maker's largest ring and chainline; a ring that touches saws through the stay.");

    public static readonly Caution StarNutCare = new("star-nut", "A star nut goes into metal steerers only, square and below the clamp; a carbon steerer takes the maker's expander.");

    public static readonly Caution Tubular = new("tubular", "A tubular is held by glue or tape alone, on a rim that is made for it; one that comes off throws the rider. Follow the makers of tyre, rim and glue.");

    public static readonly Caution TubeCare = new("inner-tube", "A tube that is too large folds, one that is stretched too far is thin: either fails without warning.");

    public static readonly Caution RimTape = new("rim-tape", "A tube or a tape that is pressed into a spoke hole bursts. The tape must cover every hole and head and stay put, and it must not lie under the beads unless its maker says so.");

    public static readonly Caution ValveHole = new("valve-hole", "Never open out a rim for a thicker valve without the rim maker's word: it takes away metal where the rim is drilled already, and carbon rims are ruined by it.");

    public static readonly Caution QuillInsertion = new("quill-insertion", "Never ride a quill above its insertion mark: it breaks, or its wedge bursts the steerer where the thread weakens it. The stem maker's mark comes before every rule.");

    public static readonly Caution Grips = new("grips", "A grip that turns or slides off the bar throws the rider. Try it by hand, dry, before every ride after fitting.");

    public static readonly Caution WornBore = new("worn-bore", "A pressed unit in a bore that has grown creaks, wanders and wears the shell further. Never fill it by guess: the frame maker says whether it may be bonded or sleeved.");

    public static readonly Caution ShellFace = new("shell-face", "An adapter that bears on paint or on an insert that is not made for it settles, works loose and can break the insert out of the shell. Face metal only; never cut carbon.");

    public static readonly Caution BinderEars = new("binder-ears", "Ears that meet clamp nothing: the post slips or turns under the rider. Never file the slot wider or pull the bolt harder; measure post and bore.");

    public static readonly Caution CarbonPost = new("carbon-post", "Carbon posts crack where a clamp pinches them at the slot. The makers of post and frame say what clamp and torque are allowed; look for cracks at the clamp often.");
}
