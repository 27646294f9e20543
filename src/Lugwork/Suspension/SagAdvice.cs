using System.Collections.Immutable;
using UnitsNet;

namespace Lugwork.Suspension;

/// <summary>How much sag is advised to start with. Rules of thumb that disagree by kind of riding: the maker's sheet comes first. Closed set, identity equality.</summary>
/// <remarks>Sag share in per cent of stroke or travel, least to most; the pages are listed as "Rear sag by kind of riding (title not kept)", "Sag in general (title not kept)" and "Sag of a downhill fork (title not kept)".</remarks>
public sealed class SagAdvice
{
    private readonly int _least;
    private readonly int _most;

    private SagAdvice(string name, bool isFork, int least, int most, Source source)
    {
        (_least, _most) = (least, most);
        Name = name;
        IsFork = isFork;
        Source = source;
    }

    /// <summary>Every row, rear first.</summary>
    public static ImmutableArray<SagAdvice> All { get; } =
    [
        new("cross-country, rear", false, 25, 25, Sources.SagByRiding),
        new("trail and enduro, rear", false, 30, 30, Sources.SagByRiding),
        new("downhill, rear", false, 30, 35, Sources.SagByRiding),
        new("in general, to start at 25 %", false, 20, 30, Sources.SagInGeneral),
        new("downhill, fork: about a third", true, 33, 33, Sources.DownhillForkSag),
    ];

    /// <summary>Kind of riding, and where.</summary>
    public string Name { get; }

    /// <summary>Of the fork; otherwise of the rear shock.</summary>
    public bool IsFork { get; }

    /// <summary>The least share.</summary>
    public Ratio Least => Ratio.FromPercent(_least);

    /// <summary>The largest share.</summary>
    public Ratio Most => Ratio.FromPercent(_most);

    /// <summary>Who advises it.</summary>
    public Source Source { get; }

    /// <summary>"downhill, rear: 30 to 35 %".</summary>
    public override string ToString() => _least == _most ? FormattableString.Invariant($"{Name}: {_least} %") : FormattableString.Invariant($"{Name}: {_least} to {_most} %");
}
