using Lugwork.Tyres;
using UnitsNet;

namespace Lugwork.Drawing;

/// <summary>Tyre, rim and frame or fork in section. x = 0 is the middle of the wheel; y = 0 is the bead seat, and up is away from the hub.</summary>
internal static class TyreDraft
{
    /// <summary>Walls of rim and tyre, and the wall of a rim over its seat: no joint reads them, and they are not dimensioned.</summary>
    private const double Casing = 2.2;
    private const double Flange = 5.5;
    private const double Stay = 16;

    public static LineDrawing Of(Build build, Slot slot, decimal? between, decimal offMiddle, decimal? axleToBrakeBridge)
    {
        bool rear = slot == Slot.RearTyre;
        Tyre tyre = build[slot] as Tyre ?? new();
        Wheel wheel = build[rear ? Slot.RearWheel : Slot.FrontWheel] as Wheel ?? new();
        Fork fork = build[Slot.Fork] as Fork ?? new();
        Known<TyreSize> allowed = rear ? build.Frame.LargestRearTyre : fork.LargestFrontTyre;
        string owner = rear ? "frame" : "fork";
        string holders = rear ? "stays of the frame" : "blades of the fork";

        DraftSize inner = DraftSize.Of(wheel.InnerWidth, "rim inside", JointInputs.Inner(rear ? Slot.RearWheel : Slot.FrontWheel), 21);
        DraftSize limit = DraftSize.Of(allowed, t => t.WidthMillimetres, $"largest tyre by the {owner} maker", JointInputs.LargestWidth(rear ? Slot.Frame : Slot.Fork), 45);
        DraftSize deep = DraftSize.Of(wheel.RimDepth, "depth of the rim at the valve", JointInputs.DepthOf(rear ? Slot.RearWheel : Slot.FrontWheel), 20);
        MountedTyre? mounted = tyre.Size.State != KnownState.Value ? null
            : inner is { IsKnown: true, Drawn: >= 10 and <= 100 } ? MountedTyre.OnRim(tyre.Size.Value, Length.FromMillimeters(inner.Drawn))
            : MountedTyre.OnMeasuringRim(tyre.Size.Value);
        string basis = inner.IsKnown ? "about, by label and rim" : "about, by its label alone";
        bool measured = IsMeasuredHere(tyre, wheel);
        DraftSize width = measured ? DraftSize.Of(tyre.MountedWidth, "tyre", JointInputs.MountedWidth(slot), 40) : mounted is null ? Open(tyre.Size, "tyre", slot, t => t.WidthMillimetres) : DraftSize.Known("tyre", mounted.Width.Millimeters, $" ({basis})");
        DraftSize height = mounted is null ? DraftSize.Open("tyre above the seat", width.Drawn, "?", width.Ask) : DraftSize.Known("tyre above the seat", mounted.Height(SectionHeight.EqualToWidth).Millimeters, " (as high as its label is wide)");
        DraftSize gap = between is { } stated ? DraftSize.Known($"between the {holders}", (double)stated)
            : DraftSize.Open($"between the {holders}", Math.Max(width.Drawn, limit.IsKnown ? limit.Drawn : 0) + 14, "?", "Inside caliper where the tyre is widest, wheel out, to 0.5 mm");
        double off = between is null ? 0 : (double)offMiddle;

        double right = (gap.Drawn / 2) - off;
        double left = -(gap.Drawn / 2) - off;
        double seat = tyre.Size.State == KnownState.Value ? tyre.Size.Value.Bead.FitCode / 2d : wheel.BeadSeat.State == KnownState.Value ? wheel.BeadSeat.Value.FitCode / 2d : 0;
        double? bridge = axleToBrakeBridge is { } axle && seat > 0 ? seat - (double)axle : null;
        double up = Math.Min(-height.Drawn - 8, (bridge ?? 0) - 10);
        double foot = deep.IsNone ? 20 : Math.Max(deep.Drawn, 6);
        DraftSheet sheet = new($"{(rear ? "Rear" : "Front")} tyre, rim and {owner}", $"Section through tyre and rim, seen along the bicycle; the hub is below. Walls of tyre, rim and {owner} are drawn without figures.", DraftScale.For(gap.Drawn + (2 * Stay), foot - up, 120, 170));

        sheet.Box(holders, DraftTone.Base, right, -height.Drawn - 4, right + Stay, foot, !gap.IsKnown);
        sheet.Box(holders, DraftTone.Base, left - Stay, -height.Drawn - 4, left, foot, !gap.IsKnown);
        if (bridge is { } at)
        {
            sheet.Box($"{(rear ? "bridge" : "crown")} of the {owner}", DraftTone.Base, left, at - 10, right, at);
        }

        double apart = mounted is not null && wheel.BeadSeat.State == KnownState.Value ? (mounted.Size.Bead.FitCode - wheel.BeadSeat.Value.FitCode) / 2d : 0;
        Rim(sheet, inner, deep, foot, apart);
        Casings(sheet, width, height, inner);
        sheet.Path("", DraftLine.Axis, false, (0, -height.Drawn - 5), (0, foot + 2));
        Limits(sheet, tyre, allowed, width, measured, height, limit, owner);

        sheet.Measure(width, -width.Drawn / 2, -height.Drawn / 2, width.Drawn / 2, -height.Drawn / 2, DraftSide.Top);
        sheet.Measure(gap, left, -height.Drawn - 4, right, -height.Drawn - 4, DraftSide.Top);
        sheet.Measure(inner, -inner.Drawn / 2, apart - 1, inner.Drawn / 2, apart - 1, DraftSide.Bottom);
        sheet.Measure(height, -width.Drawn / 2, -height.Drawn, -width.Drawn / 2, 0, DraftSide.Left);
        if (!deep.IsNone)
        {
            sheet.Measure(deep, (inner.Drawn / 2) + Casing, apart, (inner.Drawn / 2) + Casing, apart + deep.Drawn, DraftSide.Right);
        }

        if (mounted is not null)
        {
            Rooms(sheet, build.Frame.Kind, mounted, width, measured ? tyre.MountedWidth.ToCandidates() : null, height, between, offMiddle, axleToBrakeBridge, right, bridge);
        }

        sheet.Note(DraftTone.Fitted, mounted is null ? "tyre" : $"tyre {mounted.Size}", -width.Drawn * 0.3, -height.Drawn * 0.85, DraftSide.Left);
        sheet.Note(DraftTone.Between, wheel.RimType.State == KnownState.Value ? $"rim, {wheel.RimType.Value.TradeName}" : "rim", -(inner.Drawn / 2) - 1, apart + 0.5, DraftSide.Left);
        sheet.Note(DraftTone.Base, holders, right + (Stay / 2), -height.Drawn * 0.3, DraftSide.Right);
        if (apart != 0)
        {
            sheet.Pair("bead and seat apart", DraftTone.Clash, Math.Max(0, (inner.Drawn / 2) - Casing), Math.Min(0, apart), inner.Drawn / 2, Math.Max(0, apart));
            sheet.Note(DraftTone.Clash, $"the bead of the tyre is made for {mounted!.Size.Bead.TradeName}, the rim has {wheel.BeadSeat.Value.TradeName}: {DraftText.Number(Math.Abs(apart))} mm apart", inner.Drawn / 2, apart / 2, DraftSide.Right);
        }

        sheet.Called(build, rear ? Slot.Frame : Slot.Fork, rear ? Slot.RearWheel : Slot.FrontWheel, slot);
        string end = rear ? "rear" : "front";
        string where = rear ? "in-frame" : "in-fork";
        sheet.Tell(build, $"{end}-tyre-bead-on-rim", $"{end}-tyre-width-on-rim", $"{end}-tubular-on-rim", $"{end}-tyre-{where}", $"{end}-tyre-on-its-rim-{where}");
        return sheet.Finish();
    }

    private static DraftSize Open(Known<TyreSize> size, string name, Slot slot, Func<TyreSize, double> width)
    {
        DraftSize open = DraftSize.Of(size, width, name, JointInputs.WidthOf(slot), 40);

        // Two sizes of one width still differ in height and place.
        return open with { Figure = null, Said = size.Values.IsEmpty ? open.Said : size.InTradeWords() };
    }

    /// <summary>The rim with its seat at a height of its own: where tyre and rim have other seats they stand apart as they would.</summary>
    private static void Rim(DraftSheet sheet, DraftSize inner, DraftSize deep, double foot, double seat)
    {
        double half = inner.Drawn / 2;
        double nose = Math.Max(3, half * 0.5);
        List<(double X, double Y)> bed = [];
        Mirrored(bed, seat, [(half, 0), (half, -Flange), (half + Casing, -Flange), (half + Casing, 2)]);
        sheet.Area("rim", DraftTone.Between, !inner.IsKnown, [.. bed]);
        List<(double X, double Y)> below = [];
        Mirrored(below, seat, [(half + Casing, 2), (nose, foot)]);
        List<(double X, double Y)> hollow = [];
        Mirrored(hollow, seat, [(half - 1, 2), (nose - 1, foot - 2)]);
        sheet.Hollow("rim", DraftTone.Between, !inner.IsKnown || !deep.IsKnown, [.. below], [.. hollow]);
    }

    private static void Mirrored(List<(double X, double Y)> outline, double seat, ReadOnlySpan<(double X, double Y)> right)
    {
        foreach ((double x, double y) in right)
        {
            outline.Add((x, y + seat));
        }

        for (int i = right.Length - 1; i >= 0; i--)
        {
            outline.Add((-right[i].X, right[i].Y + seat));
        }
    }

    private static void Casings(DraftSheet sheet, DraftSize width, DraftSize height, DraftSize inner)
    {
        List<(double X, double Y)> outline = [];
        Half(outline, width.Drawn, height.Drawn, inner.Drawn);
        List<(double X, double Y)> inside = [];
        Half(inside, Math.Max(width.Drawn - (2 * Casing), 4), Math.Max(height.Drawn - Casing, Flange + 4), Math.Max(inner.Drawn - (2 * Casing), 3));
        inside.Reverse();
        outline.AddRange(inside);
        sheet.Area("tyre", DraftTone.Fitted, !width.IsKnown, [.. outline]);
    }

    /// <summary>From the left bead over the tread to the right bead: upright between the flanges of the rim, then round, as wide as it is said to be and as high.</summary>
    private static void Half(List<(double X, double Y)> outline, double width, double height, double inner)
    {
        const int Steps = 14;
        double middle = Math.Max(Flange + ((height - Flange) * 0.45), height - (width / 2));
        List<(double X, double Y)> right = [(inner / 2, 0)];
        for (int i = 0; i <= Steps; i++)
        {
            (double sin, double cos) = Math.SinCos(i * Math.PI / 2 / Steps);
            right.Add(((inner / 2) + (((width - inner) / 2) * sin), -Flange - ((middle - Flange) * (1 - cos))));
        }

        for (int i = 1; i <= Steps; i++)
        {
            (double sin, double cos) = Math.SinCos(i * Math.PI / 2 / Steps);
            right.Add((width / 2 * cos, -middle - ((height - middle) * sin)));
        }

        foreach ((double x, double y) in right)
        {
            outline.Add((-x, y));
        }

        for (int i = right.Count - 2; i >= 0; i--)
        {
            outline.Add(right[i]);
        }
    }

    /// <summary>The width was measured on the rim that is there, or nobody said on which.</summary>
    private static bool IsMeasuredHere(Tyre tyre, Wheel wheel)
    {
        Candidates on = tyre.MountedRim.ToCandidates();
        Candidates here = wheel.InnerWidth.ToCandidates();
        return tyre.MountedWidth.State is KnownState.Value or KnownState.Measured
            && (on.State is not (KnownState.Value or KnownState.Measured) || here.State is not (KnownState.Value or KnownState.Measured) || (on.Low <= here.High && here.Low <= on.High));
    }

    private static void Limits(DraftSheet sheet, Tyre tyre, Known<TyreSize> allowed, DraftSize width, bool measured, DraftSize height, DraftSize limit, string owner)
    {
        if (limit.IsNone)
        {
            sheet.Say($"The maker of the {owner} prints no largest tyre: that is unknown, not unlimited.");
            return;
        }

        sheet.Measure(limit, -limit.Drawn / 2, -height.Drawn / 2, limit.Drawn / 2, -height.Drawn / 2, DraftSide.Top);
        if (!limit.IsKnown)
        {
            return;
        }

        foreach (int side in new[] { -1, 1 })
        {
            sheet.Path("limit of the maker", DraftLine.Axis, false, (side * limit.Drawn / 2, -height.Drawn), (side * limit.Drawn / 2, 0));
        }

        if (tyre.Size.State == KnownState.Value && (measured || tyre.Size.Value.WidthMillimetres > limit.Drawn) && allowed.State == KnownState.Value && allowed.Value.Bead == tyre.Size.Value.Bead && width.Drawn > limit.Drawn)
        {
            sheet.Pair("wider than the maker allows", DraftTone.Clash, limit.Drawn / 2, -height.Drawn * 0.65, width.Drawn / 2, -height.Drawn * 0.35);
            sheet.Note(DraftTone.Clash, measured ? $"measured {DraftText.Number(width.Drawn - limit.Drawn, 1)} mm wider than the maker allows" : $"label {DraftText.Number(tyre.Size.Value.WidthMillimetres - limit.Drawn, 1)} mm wider than the maker allows", -width.Drawn / 2, -height.Drawn / 2, DraftSide.Left);
        }
    }

    private static void Rooms(DraftSheet sheet, Known<BicycleKind> kind, MountedTyre mounted, DraftSize width, Candidates? measured, DraftSize height, decimal? between, decimal offMiddle, decimal? axleToBrakeBridge, double right, double? bridge)
    {
        if (between is { } gap)
        {
            (Length apart, Length off) = (Length.FromMillimeters((double)gap), Length.FromMillimeters((double)offMiddle));
            TyreClearance side = measured is { } read ? TyreClearance.EachSideAsMeasured(read.Low / (double)Nanometres.PerMillimetre, read.High / (double)Nanometres.PerMillimetre, apart, off) : TyreClearance.EachSide(mounted, apart, off);
            double room = side.Likely.Millimeters;
            sheet.Tell(Asked(side, kind));
            sheet.Measure(DraftSize.Known("room at the closer side", room, measured is not null ? ", by the width as measured" : $", {DraftText.Number(side.Least.Millimeters, 1)} mm with the largest tyre of this name"), width.Drawn / 2, -height.Drawn / 2, right, -height.Drawn / 2, DraftSide.Top);
            if (room < 0)
            {
                sheet.Box("tyre in the stay", DraftTone.Clash, right, -height.Drawn * 0.6, width.Drawn / 2, -height.Drawn * 0.4);
            }
        }

        if (axleToBrakeBridge is { } axle && bridge is { } at)
        {
            TyreClearance above = TyreClearance.Above(mounted, Length.FromMillimeters((double)axle));
            double room = above.Likely.Millimeters;
            sheet.Tell(Asked(above, kind));
            sheet.Measure(DraftSize.Known("room above the tread", room, $", {DraftText.Number(above.Least.Millimeters, 1)} mm with the largest tyre of this name"), 0, -height.Drawn, 0, at, DraftSide.Right);
            if (room < 0)
            {
                sheet.Box("tyre in the bridge", DraftTone.Clash, -width.Drawn / 4, -height.Drawn, width.Drawn / 4, at);
            }
        }
    }

    /// <summary>The room against what is asked for: less of racing and road bicycles. Where the kind is not known the wider rule counts, and what it refuses is held against the other; a name spreads by more than the rules differ, so what the one refuses never fits by the other.</summary>
    private static SumCheck Asked(TyreClearance room, Known<BicycleKind> kind)
    {
        SumCheck others = room.Check(ClearanceRule.Others);
        bool mayBeRoad = kind.State == KnownState.Value ? kind.Value == BicycleKind.Road || kind.Value == BicycleKind.Track : others.Verdict == Verdict.DoesNotFit;
        return mayBeRoad ? room.Check(ClearanceRule.Road) : others;
    }
}
