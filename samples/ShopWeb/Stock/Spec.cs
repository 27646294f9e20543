using System.Buffers.Binary;
using System.Security.Cryptography;
using System.Text;
using Lugwork;
using Lugwork.Drivetrain;
using Lugwork.Hubs;
using Lugwork.Seating;
using Lugwork.Tyres;

namespace ShopWeb.Stock;

/// <summary>The interfaces of a part, once for all articles that say the same. Its number follows from its text, so that it never changes its meaning, in no process.</summary>
internal sealed class Spec
{
    public long Id { get; init; }

    /// <summary>The slot by which its text is read.</summary>
    public string Slot { get; init; } = "";

    /// <summary>The short form.</summary>
    public string Text { get; init; } = "";

    /// <summary>Sizes that customers ask for by themselves; null where it has none, or it is not stated.</summary>
    public SeatpostDiameter? Post { get; init; }

    public TyreSize? Tyre { get; init; }

    public HubStandard? Hub { get; init; }

    public FreehubBody? Body { get; init; }

    public BicycleKind? Kind { get; init; }

    /// <summary>The part of which this is the text; null where it cannot be read.</summary>
    public Part? Part() => Lugwork.Slot.Find(Slot) is { } slot && PartText.TryRead(slot, Text, out Part part, out _) ? part : null;

    public static Spec Of(Slot slot, string text, Part part) => new()
    {
        Id = NumberOf(slot, text),
        Slot = slot.Key,
        Text = text,
        Post = part is Seatpost post ? Sure(post.Diameter) : null,
        Tyre = part is Tyre tyre ? Sure(tyre.Size) : null,
        Hub = part is Wheel wheel ? One(wheel.Hub) : null,
        Body = part is Wheel driven ? One(driven.FreehubBody) : null,
        Kind = part is Frame frame ? One(frame.Kind) : null,
    };

    /// <summary>63 bits of a hash of slot and text that nobody can aim at another text's.</summary>
    public static long NumberOf(Slot slot, string text) => BinaryPrimitives.ReadInt64LittleEndian(SHA256.HashData(Encoding.UTF8.GetBytes($"{slot.Key}|{text}"))) & long.MaxValue;

    private static T? Sure<T>(Known<T> known)
        where T : struct, IInterfaceValue<T> => known.State == KnownState.Value ? known.Value : null;

    private static T? One<T>(Known<T> known)
        where T : class, IInterfaceValue<T> => known.State == KnownState.Value ? known.Value : null;
}

/// <summary>A row of the relation part_fit: what a spec is to a joint of a slot. The row of the joint "" says that it goes to the slot at all.</summary>
internal sealed class SpecFit
{
    public long SpecId { get; init; }

    public string Slot { get; init; } = "";

    public string Joint { get; init; } = "";

    public string Key { get; init; } = "";

    public long LimitMin { get; init; }

    public long LimitMax { get; init; }
}

/// <summary>One row: the state of the stock.</summary>
internal sealed class StockState
{
    public int Id { get; init; }

    /// <summary>How many deliveries came since the first stock.</summary>
    public long Version { get; set; }

    public int Seed { get; init; }

    /// <summary>The build of the library that wrote the relation: another one may have joints or values that its rows lack.</summary>
    public string Library { get; set; } = "";
}
