namespace Lugwork.Drivetrain;

/// <summary>A shifter with its derailleur and its sprockets.</summary>
/// <remarks>No family has a published pull and a published ratio, so figures refuse or leave open; a fit rests on the word of the maker, or on sprockets of the same spacing.</remarks>
internal static class ShiftRelations
{
    // The fewest sprockets that are indexed: what is missed over them is missed over more.
    private const int FewestSteps = 4;

    private const string Chart = "the list of the shifter's maker";

    private static readonly Reason Named = new("named-by-maker", "The shifter's maker names it with this derailleur.", Cautions.ShiftSetUp) { Sources = [Sources.CommonPractice] };

    private static readonly Reason SameSpacing = new("same-spacing", "A shifter for {1} on sprockets {0}.", Cautions.ShiftSetUp) { Sources = [Sources.SprocketSpacing, Sources.CassetteWidths] };

    private static readonly Reason NamedSprockets = new("sprockets-named-by-maker", "The shifter's maker names it with these sprockets or this hub.", Cautions.ShiftSetUp) { Sources = [Sources.CommonPractice] };

    /// <summary>Inputs: signal of the shifter, signal of the derailleur, family of the shifter, family of the derailleur, the maker's word.</summary>
    public static Relation WithDerailleur { get; } = new Pair(families: true);

    /// <summary>Inputs: signal of the shifter, signal of the front derailleur, the maker's word.</summary>
    public static Relation WithFrontDerailleur { get; } = new Pair(families: false);

    /// <summary>Inputs: spacing of the sprockets, spacing of the shifter, the maker's word.</summary>
    public static Relation WithSprockets { get; } = new Sprockets();

    private sealed class Pair(bool families) : Relation
    {
        public override string Kind => families ? "same signal, families that published figures do not part, and the maker's word" : "same signal, and the maker's word";

        public override Outcome Judge(ReadOnlySpan<long> values)
        {
            (long shifter, long derailleur, long word) = (values[0], values[1], values[families ? 4 : 2]);
            if (shifter == 0 || derailleur == 0)
            {
                return new(Verdict.DoesNotFit, Reasons.NothingToMate);
            }

            long single = ShiftSignal.Single.FitCode;
            if (shifter == single || derailleur == single || shifter != derailleur)
            {
                return new(Verdict.DoesNotFit, shifter == derailleur ? Misfits.NothingShifts : Misfits.OtherSignal);
            }

            bool apart = families && shifter == ShiftSignal.Cable.FitCode && values[2] != 0 && values[3] != 0
                && Indexing.NeverTogether(ActuationFamily.OfFitCode(values[2]), ActuationFamily.OfFitCode(values[3]), FewestSteps) is not null;
            return apart ? new(Verdict.DoesNotFit, Misfits.FamiliesApart)
                : word == MakersWord.Refused.FitCode ? new(Verdict.DoesNotFit, Misfits.RuledOut)
                : word == MakersWord.Allowed.FitCode ? new(Verdict.Fits, Named)
                : new(Verdict.NeedsMeasuring, Misfits.AskPair);
        }
    }

    private sealed class Sprockets : Relation
    {
        public override string Kind => "same spacing, else the pitch over all sprockets, and the maker's word";

        public override Outcome Judge(ReadOnlySpan<long> values)
        {
            (long sprockets, long shifter, long word) = (values[0], values[1], values[2]);
            long single = SprocketSpacing.Single.FitCode;
            if (sprockets == 0)
            {
                return new(Verdict.DoesNotFit, Reasons.NothingToMate);
            }

            if (word == MakersWord.Refused.FitCode)
            {
                return new(Verdict.DoesNotFit, Misfits.RuledOut);
            }

            if (shifter == 0)
            {
                return word == MakersWord.Allowed.FitCode ? new(Verdict.Fits, NamedSprockets) : new(Verdict.NeedsMeasuring, Misfits.NoClicks);
            }

            if (sprockets == single)
            {
                return word == MakersWord.Allowed.FitCode ? new(Verdict.Fits, NamedSprockets) : new(Verdict.NeedsMeasuring, Misfits.HubGear);
            }

            if (sprockets == shifter)
            {
                return new(Verdict.Fits, SameSpacing);
            }

            (SprocketSpacing there, SprocketSpacing made) = (SprocketSpacing.OfFitCode(sprockets), SprocketSpacing.OfFitCode(shifter));
            return shifter == single ? new(Verdict.DoesNotFit, Misfits.ForOne)
                : (there.Source == Sources.ThickPlates) != (made.Source == Sources.ThickPlates) ? new(Verdict.DoesNotFit, Misfits.ThickApart)
                : Misses(there, made) ? new(Verdict.DoesNotFit, Misfits.OtherSpacing)
                : word == MakersWord.Allowed.FitCode ? new(Verdict.Fits, NamedSprockets)
                : new(Verdict.NeedsMeasuring, Misfits.NearSpacing);
        }

        /// <summary>Over all steps the nearest printed pitches drift apart by more than half a pitch.</summary>
        private static bool Misses(SprocketSpacing there, SprocketSpacing made)
        {
            int apart = Math.Max(there.LeastMicrometres - made.MostMicrometres, made.LeastMicrometres - there.MostMicrometres);
            return there.MostMicrometres > 0 && made.MostMicrometres > 0 && 2 * apart * (there.Speeds - 1) > there.MostMicrometres;
        }
    }

    /// <summary>Reasons where the two do not simply fit, made when the first pair asks for one.</summary>
    private static class Misfits
    {
        public static readonly Reason OtherSignal = new("other-shift-signal", "A shifter by {0} and a derailleur by {1} never work together.")
        {
            Mend = "shifter and derailleur of one signal",
            Sources = [Sources.HydraulicShift, Sources.WiredShift, Sources.WirelessShift],
        };

        public static readonly Reason NothingShifts = new("nothing-shifts", "{0} and {1}: nothing is shifted here.") { Sources = [Sources.CommonPractice] };

        public static readonly Reason FamiliesApart = new("actuation-apart", "A shifter of family {2} and a derailleur of family {3}: by published figures the last sprocket is missed, or their maker says that they do not cross over.", Cautions.ShiftSetUp)
        {
            Mend = "a shifter of the derailleur's family, or a derailleur of the shifter's",
            Sources = [Sources.GearEquation, Sources.PullBlog, Sources.ThickPlates],
        };

        public static readonly Reason RuledOut = new("ruled-out-by-maker", "The shifter's maker rules this pair out.")
        {
            Mend = "a pair that the maker names together",
            Sources = [Sources.CommonPractice],
        };

        public static readonly Reason AskPair = new("ask-for-pair", "Nothing published settles this shifter with this derailleur: look both up in " + Chart + ".", Cautions.ShiftSetUp) { Sources = [Sources.GearEquation, Sources.PullBlog] };

        public static readonly Reason OtherSpacing = new("other-spacing", "A shifter for {1} on sprockets {0}: the pitch differs, and the last sprocket is missed by more than half of it.", Cautions.ShiftSetUp)
        {
            Mend = "a shifter for the sprockets, or sprockets for the shifter",
            Sources = [Sources.SprocketSpacing, Sources.CassetteWidths, Sources.Derived],
        };

        public static readonly Reason ThickApart = new("thick-plates-apart", "A shifter for {1} on sprockets {0}: thick plates have a pitch and a pull of their own.", Cautions.ShiftSetUp)
        {
            Mend = "shifter, derailleur and sprockets of one family: only chain and rings cross over",
            Sources = [Sources.ThickPlates],
        };

        public static readonly Reason NearSpacing = new("near-spacing", "A shifter for {1} on sprockets {0}: no source accepts the pair. Ask " + Chart + ".", Cautions.ShiftSetUp) { Sources = [Sources.SprocketSpacing, Sources.Derived] };

        public static readonly Reason HubGear = new("hub-gear-shifter", "One sprocket: a hub gear is shifted by the shifter that its maker names for it.") { Sources = [Sources.HubGearPage] };

        public static readonly Reason NoClicks = new("no-clicks", "A shifter without clicks on sprockets {0}: it has to pull enough cable for all of them. Try it.") { Sources = [Sources.CommonPractice] };

        public static readonly Reason ForOne = new("shifter-for-one", "A shifter for one sprocket does not shift sprockets {0}.") { Mend = "a shifter for the sprockets", Sources = [Sources.Derived] };
    }
}
