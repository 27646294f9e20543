using Lugwork.Brakes;

namespace Lugwork.Drawing;

/// <summary>Rotor, mount, adapter and caliper from the side of the rotor. The middle of the axle is (0, 0); the mount is turned so that its face or its row of holes is level.</summary>
internal static class BrakeDraft
{
    /// <summary>The pads stand this far inside the edge of the rotor, and a caliper is about this large: no joint reads either, and neither is dimensioned.</summary>
    private const double Inside = 8;
    private const double Body = 28;

    /// <summary>The plate under the caliper of a flat-mount fork is drawn about this thick with the mount's own rotor, without a figure.</summary>
    private const double Plate = 6;

    /// <summary>Pads to the face of the posts, by the one drawing of posts that was read.</summary>
    private static readonly double Sine = Math.Sqrt(3) / 2;

    private const string RotorPart = "rotor";

    public static LineDrawing Of(Build build, Slot slot)
    {
        bool rear = slot == Slot.RearCaliper;
        Fork fork = build[Slot.Fork] as Fork ?? new();
        Rotor rotor = build[rear ? Slot.RearRotor : Slot.FrontRotor] as Rotor ?? new();
        Caliper caliper = build[slot] as Caliper ?? new();
        Known<BrakeMount> mount = rear ? build.Frame.RearBrakeMount : fork.FrontBrakeMount;
        Known<Dimension> largest = rear ? build.Frame.LargestRearRotor : fork.LargestFrontRotor;
        string owner = rear ? "frame" : "fork";

        DraftSize own = DraftSize.Of(mount, m => m.NativeRotorMillimetres, "rotor of the bare mount", rear ? JointInputs.RearMount : JointInputs.FrontMount, 160);
        DraftSize size = DraftSize.Of(rotor.Size, r => r.FitCode, "rotor", JointInputs.Size(rear ? Slot.RearRotor : Slot.FrontRotor), own.Drawn);
        DraftSize limit = DraftSize.Of(largest, $"largest rotor by the {owner} maker", rear ? JointInputs.LargestRear : JointInputs.LargestFront, Math.Max(size.Drawn, own.Drawn) + 20);
        DraftSize foot = DraftSize.Of(caliper.Mounting, f => f.HoleSpacing.Millimeters, "holes of the caliper", rear ? JointInputs.RearMounting : JointInputs.FrontMounting, 74.2);
        DraftSize holes = DraftSize.Of(mount, m => BrakeMountGeometry.Of(m).Spacing / 100d, "holes of the mount", rear ? JointInputs.RearMount : JointInputs.FrontMount, 74.2);

        double edge = Math.Max(size.Drawn, Math.Max(own.Drawn, limit.IsKnown ? limit.Drawn : 0)) / 2;
        DraftSheet sheet = new($"{(rear ? "Rear" : "Front")} rotor, adapter and caliper", $"Seen from the side of the rotor, the mount turned level. The forms of caliper, adapter and {owner} are drawn without figures.", DraftScale.For((2 * edge) + 40, (2 * edge) + 60, 130, 150));
        sheet.Ring(RotorPart, DraftTone.Fitted, 0, 0, size.Drawn / 2, !size.IsKnown);
        sheet.Ring("", DraftTone.Bare, 0, 0, Math.Max((size.Drawn / 2) - 15, 20), line: DraftLine.Thin);
        sheet.Ring("", null, 0, 0, 10, line: DraftLine.Thin);
        sheet.Path("", DraftLine.Axis, false, (-edge - 5, 0), (edge + 5, 0));
        sheet.Path("", DraftLine.Axis, false, (0, -edge - 5), (0, edge + 5));

        double pad = (size.Drawn / 2) - Inside;
        double moved = (size.Drawn - own.Drawn) / 2;
        double padX = pad / 2;
        double footY = -(pad * Sine) + 6.5;
        double plate = TakesPlate(mount) ? Plate : 0;
        Mount(sheet, mount, holes, own, owner, footY + plate, padX, moved);
        ForkPlate(sheet, mount, size, footY, footY + plate + (moved * Sine), padX - (moved / 4));
        bool open = !foot.IsKnown || !size.IsKnown;
        sheet.Box("caliper", DraftTone.Fitted, padX - (foot.Drawn / 2) - 7, footY - Body, padX + (foot.Drawn / 2) + 7, footY, open);
        foreach (int side in new[] { -1, 1 })
        {
            double x = padX + (side * foot.Drawn / 2);
            if (caliper.Mounting.State == KnownState.Value && caliper.Mounting.Value == CaliperFoot.Tabs)
            {
                sheet.Ring("hole of the caliper", null, x, footY - 7, 3);
            }
            else
            {
                sheet.Path("bolt of the caliper", DraftLine.Axis, false, (x, footY - Body - 3), (x, footY + 9));
            }
        }

        Adapter(sheet, mount, caliper, rotor, size, own, moved);
        Limit(sheet, size, limit, owner);
        sheet.Measure(size, -size.Drawn / 2, 0, size.Drawn / 2, 0, DraftSide.Bottom);
        if (own.IsKnown)
        {
            sheet.Ring("rotor of the bare mount", null, 0, 0, own.Drawn / 2, line: DraftLine.Axis);
        }

        if (!own.IsNone)
        {
            sheet.Measure(own, -own.Drawn / 2, 0, own.Drawn / 2, 0, DraftSide.Bottom);
        }

        if (!foot.IsNone)
        {
            sheet.Measure(foot, padX - (foot.Drawn / 2), footY - 7, padX + (foot.Drawn / 2), footY - 7, DraftSide.Top);
        }

        sheet.Note(DraftTone.Fitted, size.IsKnown ? $"rotor {DraftText.Number(size.Drawn)}" : "rotor", -size.Drawn / 2 * 0.7, size.Drawn / 2 * 0.6, DraftSide.Left);
        sheet.Note(DraftTone.Fitted, caliper.Mounting.State == KnownState.Value ? caliper.Mounting.Value.TradeName : "caliper", padX + (foot.Drawn / 2), footY - (Body * 0.7), DraftSide.Right);
        sheet.Called(build, rear ? Slot.Frame : Slot.Fork, rear ? Slot.RearRotor : Slot.FrontRotor, slot);
        string end = rear ? "rear" : "front";
        sheet.Tell(build, $"{end}-caliper-on-mount", $"{end}-rotor-within-limit", $"{end}-adapter-with-rotor", $"{end}-rotor-on-hub", $"{end}-rotor-thickness-in-caliper");
        return sheet.Finish();
    }

    private static void Mount(DraftSheet sheet, Known<BrakeMount> mount, DraftSize holes, DraftSize own, string owner, double footY, double padX, double moved)
    {
        string part = $"brake mount of the {owner}";
        if (mount.State == KnownState.None)
        {
            sheet.Say($"The {owner} has no mount for a disc brake.");
            return;
        }

        MountGeometry figures = mount.State == KnownState.Value ? BrakeMountGeometry.Of(mount.Value) : default;
        string called = mount.State == KnownState.Value ? mount.Value.TradeName : "brake mount";
        if (figures is { Form: MountForm.Tabs, NearHole: > 0 })
        {
            // The two holes on a level line, each at its own distance from the axle.
            double near = figures.NearHole / 100d;
            double far = figures.LeastFarHole / 100d;
            double between = figures.Spacing / 100d;
            double x = ((far * far) - (near * near) - (between * between)) / (2 * between);
            double y = -Math.Sqrt(Math.Max(0, (near * near) - (x * x)));
            sheet.Box(part, DraftTone.Base, x - 9, y - 8, x + between + 9, y + 8);
            sheet.Ring("hole of the mount", null, x, y, 3);
            sheet.Ring("hole of the mount", null, x + between, y, 3);
            sheet.Measure(holes, x, y, x + between, y, DraftSide.Top);
            sheet.Measure(DraftSize.Known("axle to the row of holes", -y) with { Said = $"{DraftText.Number(-y, 1)} mm, by the distances of the two holes" }, -20, y, -20, 0, DraftSide.Left);
            sheet.Note(DraftTone.Base, called, x + between + 6, y, DraftSide.Right);
            return;
        }

        double middle = padX - (moved / 2);
        double face = figures.PostFace > 0 ? -figures.PostFace / 100d : footY + (moved * Sine);
        bool open = mount.State != KnownState.Value || figures.PostFace == 0;
        foreach (int side in new[] { -1, 1 })
        {
            sheet.Box(part, DraftTone.Base, middle + (side * holes.Drawn / 2) - 7, face, middle + (side * holes.Drawn / 2) + 7, face + 22, open);
        }

        sheet.Measure(holes, middle - (holes.Drawn / 2), face + 10, middle + (holes.Drawn / 2), face + 10, DraftSide.Top);
        if (figures.PostFace > 0)
        {
            sheet.Measure(DraftSize.Known("axle to the face of the posts", -face, ", by one maker's drawing; others differ"), middle - (holes.Drawn / 2), face, middle - (holes.Drawn / 2), 0, DraftSide.Left);
        }

        sheet.Note(DraftTone.Base, called, middle + (holes.Drawn / 2) + 5, face + 14, DraftSide.Right);
        if (!own.IsKnown)
        {
            sheet.Say($"The mount of the {owner} is not decided: {mount.InTradeWords()}.");
        }
    }

    /// <summary>Between the flat mount of a fork and its caliper there is always a plate.</summary>
    private static bool TakesPlate(Known<BrakeMount> mount) => mount.State == KnownState.Value && mount.Value is { Form: MountForm.Flat, IsFront: true };

    private static void ForkPlate(DraftSheet sheet, Known<BrakeMount> mount, DraftSize size, double foot, double face, double middle)
    {
        if (!TakesPlate(mount) || face <= foot)
        {
            return;
        }

        bool isFor = size.IsKnown && (size.Drawn == mount.Value.NativeRotorMillimetres || size.Drawn == mount.Value.PlateRotorMillimetres);
        sheet.Box("plate of the flat mount", DraftTone.Between, middle - 24, foot, middle + 24, face, open: true);
        sheet.Note(DraftTone.Between, isFor ? $"plate, turned for {DraftText.Number(size.Drawn)}" : "plate", middle + 20, (foot + face) / 2, DraftSide.Right);
    }

    private static void Adapter(DraftSheet sheet, Known<BrakeMount> mount, Caliper caliper, Rotor rotor, DraftSize size, DraftSize own, double moved)
    {
        if (caliper.Adapter.State == KnownState.Value && size.IsKnown && own.IsKnown)
        {
            There(sheet, mount, caliper.Adapter.Value, size, own);
        }

        if (!size.IsKnown || !own.IsKnown || moved == 0)
        {
            return;
        }

        string direction = moved > 0 ? "out" : "in";
        double x = -Math.Max(size.Drawn, own.Drawn) / 2 * 0.25;
        double from = -own.Drawn / 2;
        double to = -size.Drawn / 2;
        sheet.Measure(DraftSize.Known($"pads move {direction} along the radius", Math.Abs(moved)), x, Math.Min(from, to), x, Math.Max(from, to), DraftSide.Left);
        if (mount.State != KnownState.Value || caliper.Mounting.State != KnownState.Value || rotor.Size.State != KnownState.Value || caliper.Adapter.State == KnownState.Value)
        {
            return;
        }

        AdapterChoice choice = AdapterChoice.Of(mount.Value, caliper.Mounting.Value, rotor.Size.Value, null);
        if (choice.OnMount.Verdict != Verdict.NeedsPart)
        {
            return;
        }

        double pad = (size.Drawn / 2) - Inside;
        double foot = -(pad * Sine) + 6.5;
        double middle = pad / 2;
        double low = mount.Value.Form == MountForm.Tabs && BrakeMountGeometry.Of(mount.Value).NearHole > 0 ? -34 : foot + (Math.Abs(moved) * Sine);
        sheet.Box("adapter", DraftTone.Between, middle - 44, foot, middle + 44, Math.Max(low, foot + 2), open: true);
        sheet.Note(DraftTone.Between, choice.Increment is { } step ? step.TradeName : "adapter", middle + 40, foot + 1.5, DraftSide.Right);
    }

    /// <summary>The adapter that is there, by its own increment: on a mount with another rotor it holds the caliper for another size, which is crossed.</summary>
    private static void There(DraftSheet sheet, Known<BrakeMount> mount, AdapterIncrement there, DraftSize size, DraftSize own)
    {
        double made = own.Drawn + there.Millimetres;
        double pad = (made / 2) - Inside;
        double foot = -(pad * Sine) + 6.5;
        double low = mount.State == KnownState.Value && mount.Value.Form == MountForm.Tabs && BrakeMountGeometry.Of(mount.Value).NearHole > 0 ? -34 : foot + (there.Millimetres / 2d * Sine);
        bool right = made == size.Drawn;
        sheet.Box("adapter", right ? DraftTone.Between : DraftTone.Clash, (pad / 2) - 44, foot, (pad / 2) + 44, Math.Max(low, foot + 2));
        sheet.Note(right ? DraftTone.Between : DraftTone.Clash, right ? there.TradeName : $"{there.TradeName} is for a rotor of {DraftText.Number(made)} mm", (pad / 2) + 40, foot + 1.5, DraftSide.Right);
    }

    private static void Limit(DraftSheet sheet, DraftSize size, DraftSize limit, string owner)
    {
        if (limit.IsNone)
        {
            sheet.Say($"The maker of the {owner} prints no largest rotor: that is unknown, not unlimited.");
            return;
        }

        sheet.Measure(limit, -limit.Drawn / 2, 0, limit.Drawn / 2, 0, DraftSide.Bottom);
        sheet.Ring("largest rotor by the maker", null, 0, 0, limit.Drawn / 2, !limit.IsKnown, DraftLine.Thin);
        if (size.IsKnown && limit.IsKnown && size.Drawn > limit.Drawn)
        {
            double band = (size.Drawn - limit.Drawn) / 2;
            sheet.Ring("rotor above the limit", DraftTone.Clash, 0, 0, (size.Drawn / 2) - (band / 2), band: band);
            sheet.Note(DraftTone.Clash, $"{DraftText.Number(size.Drawn - limit.Drawn)} mm above the largest rotor", -limit.Drawn / 2, 0, DraftSide.Left);
        }
    }
}
