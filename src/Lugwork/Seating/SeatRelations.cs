namespace Lugwork.Seating;

/// <summary>Collar on seat tube, saddle on post.</summary>
internal static class SeatRelations
{
    private static readonly Reason SameCollar = new("same-collar", "{1} collar round a seat tube that is {0} outside.") { Sources = [Sources.ClampShop] };

    private static readonly Reason CollarSmall = new("collar-too-small", "{1} collar does not go round a seat tube that is {0} outside. A collar follows the tube, not the post.")
    {
        Mend = "a collar of the seat tube's outside diameter",
        Sources = [Sources.ClampShop],
    };

    private static readonly Reason CollarLarge = new("collar-too-large", "{1} collar is loose round a seat tube that is {0} outside. A collar follows the tube, not the post.")
    {
        Mend = "a collar of the seat tube's outside diameter",
        Sources = [Sources.ClampShop],
    };

    /// <summary>Inputs: seat tube outside, collar.</summary>
    public static Relation Collar { get; } = new SameKey(
        0, 1, SameCollar, (tube, collar) => SeatClampSize.OfFitCode(collar).Hundredths < SeatClampSize.OfFitCode(tube).Hundredths ? CollarSmall : CollarLarge, []);

    private static readonly Reason SameRails = new("same-rails", "{1} in a head for {0}.") { Sources = [Sources.CommonPractice, Sources.Memory] };

    /// <summary>Inputs: post head, saddle rails.</summary>
    public static Relation Rails { get; } = new Matrix(0, 1, Cell, [], [Sources.CommonPractice, Sources.Memory]);

    private static Outcome Cell(long head, long saddle)
    {
        RailClamp clamp = RailClamp.OfFitCode(head);
        SaddleRails rails = SaddleRails.OfFitCode(saddle);
        if (clamp.FitKey == rails.FitKey)
        {
            return new(Verdict.Fits, SameRails);
        }

        bool ownHead = clamp == RailClamp.Beam || clamp == RailClamp.Pivotal || rails == SaddleRails.Beam || rails == SaddleRails.Pivotal;
        if (ownHead)
        {
            return new(Verdict.DoesNotFit, Misfits.OtherHead);
        }

        bool oval = rails == SaddleRails.Oval7x9 || rails == SaddleRails.Oval7x9Point6 || rails == SaddleRails.Oval7x10;
        if (clamp == RailClamp.Round7 || clamp == RailClamp.Round8)
        {
            return oval ? new(Verdict.DoesNotFit, Misfits.OvalInRound)
                : rails == SaddleRails.Round8 ? new(Verdict.DoesNotFit, Misfits.TooThick) : new(Verdict.NeedsMeasuring, Misfits.AskJaws);
        }

        bool thicker = rails == SaddleRails.Round8 || (clamp == RailClamp.Oval7x9 && rails == SaddleRails.Oval7x10);
        return thicker ? new(Verdict.DoesNotFit, Misfits.TooThick) : new(Verdict.NeedsMeasuring, Misfits.AskJaws);
    }

    /// <summary>Reasons where the two do not simply fit, made when the first pair asks for one.</summary>
    private static class Misfits
    {
        public static readonly Reason OtherHead = new("other-head", "{1} and a head for {0} are two systems.")
        {
            Mend = "a seatpost head for this saddle, or a saddle for this head",
            Sources = [Sources.Memory],
        };

        public static readonly Reason OvalInRound = new("oval-in-round", "{1} in a head for {0}: the jaws crush the rail or miss it.", Cautions.Rails)
        {
            Mend = "the clamp set for these rails from the post's maker, or a saddle with the rails that the head takes",
            Sources = [Sources.Memory],
        };

        public static readonly Reason AskJaws = new("ask-jaws", "{1} in a head for {0}: some jaws take both, some do not. Ask the post's maker.", Cautions.Rails)
        {
            Sources = [Sources.Memory],
        };

        public static readonly Reason TooThick = new("rails-too-thick", "{1} are thicker than a head for {0} takes: the jaws bite.", Cautions.Rails)
        {
            Mend = "jaws for these rails, or a saddle with the rails that the head takes",
            Sources = [Sources.Memory],
        };
    }
}
