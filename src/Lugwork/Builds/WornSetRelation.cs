using System.Collections.Immutable;
using Lugwork.Drivetrain;

namespace Lugwork;

/// <summary>Chain, sprockets and rings wear as a set: what is said of one beside what is said of the others, and of the chain its length too.</summary>
internal sealed class WornSetRelation : Relation, ICutsLengths
{
    private static readonly Reason NothingSaid = new("worn-set-none", "There is no condition to judge by.");

    private static readonly Reason Alike = new("worn-alike", "Chain {0}, sprockets {1}, rings {2}: nothing stated speaks against them together.") { Sources = [Sources.ChainWithSprockets] };

    private static readonly Reason NewOnOld = new("new-chain-on-used-teeth", "Chain {0}, sprockets {1}, rings {2}: a new chain may skip on teeth that an old one has worn.", Cautions.ChainWorn) { Sources = [Sources.ChainWithSprockets, Sources.UsedBicycle] };

    private static readonly Reason NewOnWorn = new("new-chain-on-worn-teeth", "Chain {0}, sprockets {1}, rings {2}: teeth that are worn out wear a new chain out and let it skip.", Cautions.ChainWorn) { Mend = AsSet, Sources = [Sources.ChainWithSprockets] };

    private static readonly Reason OnWornTeeth = new("chain-on-worn-teeth", "Chain {0}, sprockets {1}, rings {2}: the chain that ran on worn teeth has to be measured before it runs on others.", Cautions.ChainWorn) { Mend = AsSet, Sources = [Sources.ChainWithSprockets, Sources.UsedBicycle] };

    private static readonly Reason WornOnNew = new("worn-chain-on-new-teeth", "Chain {0} ({3} over 24 pitches), sprockets {1}, rings {2}: a chain that is worn out wears new teeth to its own pitch.", Cautions.ChainWorn) { Mend = "a new chain", Sources = [Sources.ChainWithSprockets, Sources.ChainWearLimits] };

    private static readonly Reason AllWorn = new("worn-chain-on-worn-teeth", "Chain {0} ({3} over 24 pitches), sprockets {1}, rings {2}: worn out together.", Cautions.ChainWorn) { Mend = AsSet, Sources = [Sources.ChainWithSprockets] };

    private static readonly Reason WornTogether = new("worn-together", "Chain {0} ({3} over 24 pitches), sprockets {1}, rings {2}: a chain that is worn out has worn them with it, and they have to be tried with a new one under load.", Cautions.ChainWorn) { Sources = [Sources.ChainWithSprockets] };

    private const string AsSet = "chain, sprockets and rings as a set";

    /// <summary>Inputs: condition of the chain, of the cassette, of the crank or chainring, length over 24 pitches (none where not measured), size of the chain. Any condition may be not said.</summary>
    public static WornSetRelation AsASet { get; } = new();

    public override string Kind => "from the table of the three together, and the length of the chain";

    public override ImmutableArray<Source> RestsOn => [Sources.ChainWithSprockets, Sources.UsedBicycle, Sources.ChainWearLimits];

    public ImmutableArray<long> Cuts => ((ICutsLengths)WearRelations.Chain).Cuts;

    public ImmutableArray<long> Gaps => [];

    public override Outcome Judge(ReadOnlySpan<long> values)
    {
        if (values[0] == 0 || values[1] == 0 || values[2] == 0)
        {
            return new(Verdict.NeedsMeasuring, NothingSaid);
        }

        bool wornTeeth = Either(values, PartCondition.Worn);
        bool newTeeth = Either(values, PartCondition.New);
        bool usedTeeth = Either(values, PartCondition.Inspected) || Either(values, PartCondition.Used) || Either(values, PartCondition.NotKnown);
        bool wornChain = values[0] == PartCondition.Worn.FitCode || IsLong(values[3], values[4]);
        return wornChain
            ? wornTeeth ? new(Verdict.DoesNotFit, AllWorn) : newTeeth ? new(Verdict.DoesNotFit, WornOnNew) : usedTeeth ? new(Verdict.NeedsMeasuring, WornTogether) : new(Verdict.Fits, Alike)
            : wornTeeth ? values[0] == PartCondition.New.FitCode ? new(Verdict.DoesNotFit, NewOnWorn) : new(Verdict.NeedsMeasuring, OnWornTeeth)
            : new(Verdict.Fits, usedTeeth && values[0] == PartCondition.New.FitCode ? NewOnOld : Alike);
    }

    private static bool Either(ReadOnlySpan<long> values, PartCondition condition) => values[1] == condition.FitCode || values[2] == condition.FitCode;

    /// <summary>Worn out by its length; a length that no chain has says nothing here.</summary>
    private static bool IsLong(long over24, long size) =>
        over24 > 0 && over24 <= ChainWear.LongestOver24 && size > 0 && ChainWear.WornOver24(ChainSize.OfFitCode(size)) is { } worn && over24 >= worn;
}
