using System.Collections.Immutable;

namespace Lugwork.Catalogues;

/// <summary>One row of the relation part_fit: something that a part is, to one joint.</summary>
public sealed record PartFitRow
{
    /// <summary>A row, such as one read back from a database.</summary>
    /// <param name="partId">The shop's own number of the part.</param>
    /// <param name="slotKey">Key of the slot, such as "seatpost".</param>
    /// <param name="jointId">Id of the joint; empty in the one row that every part has.</param>
    /// <param name="key">What the part is to the joint: "seatpost-in-seat-tube=27.2". The joint stands before it, so that two joints never share a key.</param>
    /// <param name="limitMin">The least that it can be: nanometres of a length, grams of a mass, microdegrees of an angle; 0 where it is no figure.</param>
    /// <param name="limitMax">The greatest that it can be, in the unit of the least: nanometres, grams or microdegrees.</param>
    public PartFitRow(long partId, string slotKey, string jointId, string key, long limitMin, long limitMax)
    {
        ArgumentNullException.ThrowIfNull(slotKey);
        ArgumentNullException.ThrowIfNull(jointId);
        ArgumentNullException.ThrowIfNull(key);
        PartId = partId;
        SlotKey = slotKey;
        JointId = jointId;
        Key = key;
        LimitMin = limitMin;
        LimitMax = limitMax;
    }

    /// <summary>The shop's own number of the part.</summary>
    public long PartId { get; internal init; }

    /// <summary>Key of the slot, such as "seatpost".</summary>
    public string SlotKey { get; internal init; }

    /// <summary>Id of the joint; empty in the one row that every part has.</summary>
    public string JointId { get; internal init; }

    /// <summary>What the part is to the joint: "seatpost-in-seat-tube=27.2". The joint stands before it, so that two joints never share a key.</summary>
    public string Key { get; internal init; }

    /// <summary>The least that it can be: nanometres of a length, grams of a mass, microdegrees of an angle; 0 where it is no figure.</summary>
    public long LimitMin { get; internal init; }

    /// <summary>The greatest that it can be, in the unit of the least: nanometres, grams or microdegrees.</summary>
    public long LimitMax { get; internal init; }
}

/// <summary>One row of the relation frame_need: something that a part may be, by one joint.</summary>
public sealed record FrameNeedRow
{
    /// <summary>A row, such as one read back from a database.</summary>
    /// <param name="frameId">The shop's own number of the frame or build.</param>
    /// <param name="slotKey">Key of the slot that is to be filled.</param>
    /// <param name="jointId">Id of the joint; empty in the one row that every slot has.</param>
    /// <param name="key">What the part may be: as in part_fit.</param>
    /// <param name="limitMin">The least that is right, nanometres of a length, grams of a mass, microdegrees of an angle; a part is met where its range meets this one.</param>
    /// <param name="limitMax">The greatest that is right, in the unit of the least: nanometres, grams or microdegrees; <see cref="FitRelations.NoLimit"/> where there is no limit.</param>
    /// <param name="bridge">What has to be bought or done; empty where it fits as it is, or where the joint is silent because nobody looked; <see cref="FitRelations.Measure"/> where it has to be measured, and <see cref="FitRelations.Check"/> where a limit alone does not say.</param>
    public FrameNeedRow(long frameId, string slotKey, string jointId, string key, long limitMin, long limitMax, string bridge)
    {
        ArgumentNullException.ThrowIfNull(slotKey);
        ArgumentNullException.ThrowIfNull(jointId);
        ArgumentNullException.ThrowIfNull(key);
        ArgumentNullException.ThrowIfNull(bridge);
        FrameId = frameId;
        SlotKey = slotKey;
        JointId = jointId;
        Key = key;
        LimitMin = limitMin;
        LimitMax = limitMax;
        Bridge = bridge;
    }

    /// <summary>The shop's own number of the frame or build.</summary>
    public long FrameId { get; internal init; }

    /// <summary>Key of the slot that is to be filled.</summary>
    public string SlotKey { get; internal init; }

    /// <summary>Id of the joint; empty in the one row that every slot has.</summary>
    public string JointId { get; internal init; }

    /// <summary>What the part may be: as in part_fit.</summary>
    public string Key { get; internal init; }

    /// <summary>The least that is right, nanometres of a length, grams of a mass, microdegrees of an angle; a part is met where its range meets this one.</summary>
    public long LimitMin { get; internal init; }

    /// <summary>The greatest that is right, in the unit of the least: nanometres, grams or microdegrees; <see cref="FitRelations.NoLimit"/> where there is no limit.</summary>
    public long LimitMax { get; internal init; }

    /// <summary>What has to be bought or done; empty where it fits as it is, or where the joint is silent because nobody looked; <see cref="FitRelations.Measure"/> where it has to be measured, and <see cref="FitRelations.Check"/> where a limit alone does not say.</summary>
    public string Bridge { get; internal init; }
}

/// <summary>Parts and frames as two plain relations, for a join in any database engine. Both are made by the joints themselves.</summary>
/// <remarks>
/// A part is a candidate for a slot of a frame where each joint that frame_need names for the slot is met by one of its rows: same slot,
/// same key, ranges that meet (<see cref="CandidateQuery"/>). No part that fits is ever missed. A joint that asks two things of the part at
/// once, such as width and bead seat of a tyre, has no rows (<see cref="DecidedByCheck"/>), and a part that may be one of several, or has a
/// size that no table has, meets more than it fits, and one of which more is unknown than the joint goes through needs measuring: so candidates are checked with a build before "fits" is said. What is to be said of a part by
/// itself, its condition or what of it lies outside the library, stands in the one row that every part has (<see cref="AskedPart"/>).
/// </remarks>
public static class FitRelations
{
    /// <summary>The greatest limit: there is none. 10 to the 15th, which every engine and JSON reader keeps exactly.</summary>
    public const long NoLimit = 1_000_000_000_000_000;

    /// <summary>Stands for a bridge where what is known does not decide it.</summary>
    public const string Measure = "measure";

    /// <summary>Stands for a bridge where the other parts of the joint are not all settled, so that no limit can be said.</summary>
    public const string Check = "check";

    /// <summary>The key of the row that every part has of which nothing is to be said by itself, and that every slot of a frame has.</summary>
    public const string AnyPart = "any";

    /// <summary>In the place of <see cref="AnyPart"/>: a part that is good with something bought for it alone.</summary>
    public const string NeedsBuyingPart = "any:part";

    /// <summary>In the place of <see cref="AnyPart"/>: a part that has to be looked at, or of which its maker has to be asked, whatever it meets: its condition is open, or something of it lies outside the library.</summary>
    public const string AskedPart = "any:ask";

    /// <summary>In the place of <see cref="AnyPart"/>: a part that is not to be used, whatever it meets. No frame needs it.</summary>
    public const string RefusedPart = "any:refused";

    /// <summary>The join, in the SQL that SQLite, PostgreSQL and DuckDB share: every part that is to be checked for every frame and slot.</summary>
    public static string CandidateQuery =>
        """
        SELECT n.frame_id, n.slot, p.part_id
        FROM frame_need n
        JOIN (SELECT frame_id, slot, COUNT(DISTINCT joint) AS joints FROM frame_need GROUP BY frame_id, slot) a ON a.frame_id = n.frame_id AND a.slot = n.slot
        JOIN part_fit p ON p.slot = n.slot AND p.key = n.key AND p.limit_min <= n.limit_max AND p.limit_max >= n.limit_min
        GROUP BY n.frame_id, n.slot, p.part_id, a.joints
        HAVING COUNT(DISTINCT n.joint) = a.joints
        """;

    /// <summary>The joints of a slot that have no rows, because one key or limit does not decide them, or because they ask for the state of the part itself, which is in the row that every part has.</summary>
    /// <param name="slot">Any slot.</param>
    public static ImmutableArray<Joint> DecidedByCheck(Slot slot)
    {
        ArgumentNullException.ThrowIfNull(slot);
        return [.. JointTable.All.Where(j => j.Slots.Contains(slot) && InputOf(j, slot) < 0)];
    }

    /// <summary>The rows of a part in a slot: one that every part has, and for each joint that has rows one for everything that the part can be.</summary>
    /// <param name="id">The shop's number of it.</param>
    /// <param name="part">The part.</param>
    /// <param name="slot">One of its places.</param>
    /// <exception cref="ArgumentException">The part does not go to this slot.</exception>
    public static ImmutableArray<PartFitRow> OfPart(long id, Part part, Slot slot)
    {
        ArgumentNullException.ThrowIfNull(part);
        ArgumentNullException.ThrowIfNull(slot);
        if (!part.Places.Contains(slot))
        {
            throw new ArgumentException($"a {part.GetType().Name} goes to {string.Join(" or ", part.Places)}, not to {slot}", nameof(slot));
        }

        part = TakenWith.Alone(part, slot);
        ImmutableArray<PartFitRow>.Builder rows = ImmutableArray.CreateBuilder<PartFitRow>();
        rows.Add(new(id, slot.Key, "", ByItself(PartAlone.VerdictOf(slot, part)), 0, 0));
        foreach (Joint joint in JointTable.All)
        {
            if (InputOf(joint, slot) is >= 0 and int at)
            {
                foreach ((string key, long least, long most) in RelationKey.Of(joint, at, part))
                {
                    rows.Add(new(id, slot.Key, joint.Id, key, least, most));
                }
            }
        }

        return rows.ToImmutable();
    }

    /// <summary>The rows of a frame or build for every slot but the frame's. What the build has in a slot does not count for that slot.</summary>
    /// <param name="id">The shop's number of it.</param>
    /// <param name="build">The build; <c>Build.From(frame)</c> for a bare frame.</param>
    /// <param name="worst">The worst verdict to meet: fits, needs part or needs measuring.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="worst"/> is another verdict.</exception>
    public static ImmutableArray<FrameNeedRow> NeedsOf(long id, Build build, Verdict worst) =>
        [.. Slot.All.Where(s => s != Slot.Frame).SelectMany(s => NeedsOf(id, build, s, worst))];

    /// <summary>The rows of a frame or build for one slot.</summary>
    /// <param name="id">The shop's number of it.</param>
    /// <param name="build">The build.</param>
    /// <param name="slot">Any slot but the frame's.</param>
    /// <param name="worst">The worst verdict to meet: fits, needs part or needs measuring.</param>
    /// <exception cref="ArgumentException">The slot is the frame's.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="worst"/> is another verdict.</exception>
    public static ImmutableArray<FrameNeedRow> NeedsOf(long id, Build build, Slot slot, Verdict worst = Verdict.NeedsMeasuring)
    {
        ArgumentNullException.ThrowIfNull(build);
        ArgumentNullException.ThrowIfNull(slot);
        if (slot == Slot.Frame)
        {
            throw new ArgumentException("a frame needs no frame", nameof(slot));
        }

        if (worst is not (Verdict.Fits or Verdict.NeedsPart or Verdict.NeedsMeasuring))
        {
            throw new ArgumentOutOfRangeException(nameof(worst), worst, "fits, needs part or needs measuring");
        }

        build = build.ReadingsAside(slot);
        ImmutableArray<FrameNeedRow>.Builder rows = ImmutableArray.CreateBuilder<FrameNeedRow>();
        rows.Add(new(id, slot.Key, "", AnyPart, 0, 0, ""));
        if (worst >= Verdict.NeedsPart)
        {
            rows.Add(new(id, slot.Key, "", NeedsBuyingPart, 0, 0, JointNeed.ToldByCheck));
        }

        if (worst >= Verdict.NeedsMeasuring)
        {
            rows.Add(new(id, slot.Key, "", AskedPart, 0, 0, Measure));
        }

        foreach (Joint joint in JointTable.All)
        {
            if (InputOf(joint, slot) is >= 0 and int at && JointNeed.Of(joint, at, build, worst) is { } need)
            {
                rows.AddRange(need.Rows().Select(r => new FrameNeedRow(id, slot.Key, joint.Id, r.Key, r.Least, r.Most, r.Bridge)));
            }
        }

        return rows.ToImmutable();
    }

    private static string ByItself(Verdict verdict) => verdict switch
    {
        Verdict.NotJudged or Verdict.Fits => AnyPart,
        Verdict.NeedsPart => NeedsBuyingPart,
        Verdict.NeedsMeasuring => AskedPart,
        _ => RefusedPart,
    };

    /// <summary>The one input of a joint that a slot gives, by its number; negative where one key does not decide the joint.</summary>
    private static int InputOf(Joint joint, Slot slot)
    {
        int own = -1;
        for (int i = 0; i < joint.Inputs.Length; i++)
        {
            if (joint.Inputs[i].Slot == slot)
            {
                if (own >= 0)
                {
                    return -1;
                }

                own = i;
            }
        }

        return joint.IsOfCondition ? -1 : own;
    }
}
