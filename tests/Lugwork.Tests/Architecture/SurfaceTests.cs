using System.Collections.Immutable;
using System.Reflection;
using System.Runtime.CompilerServices;
using Lugwork.Catalogues;
using Lugwork.Workshop;

namespace Lugwork.Tests.Architecture;

/// <summary>What stays open to change after 1.0: answers are made by the library alone, and the kinds of parts are its own.</summary>
public sealed class SurfaceTests
{
    private static readonly Type[] Public = [.. typeof(Build).Assembly.GetExportedTypes()];

    /// <summary>Only what a caller makes may be taken apart by position: its members are frozen in their order.</summary>
    [Fact]
    public void Only_what_callers_make_has_members_by_position()
    {
        string[] callers = ["CatalogueKey", "CatalogueLine", "CatalogueRow", "Caution", "ChoiceBridgePrice", "CostSeller", "Evidence", "LeaveToShop", "SpecRow", "WorkConsumable", "WorkPrerequisite", "WorkTool"];
        Assert.Equal(callers, Public.Where(t => t.GetMethod("Deconstruct") is not null).Select(t => t.Name).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void No_row_that_the_library_makes_can_be_rewritten_outside()
    {
        foreach (Type type in new[] { typeof(Bridge), typeof(WorkEntry), typeof(Remedy), typeof(Measurement), typeof(WaivedFit), typeof(AsBuiltValue), typeof(AsBuiltCut) })
        {
            Assert.Empty(type.GetConstructors());
            Assert.All(type.GetProperties(BindingFlags.Public | BindingFlags.Instance | BindingFlags.DeclaredOnly), p => Assert.False(p.SetMethod is { IsPublic: true }, $"{type.Name}.{p.Name}"));
        }

        // What has public setters is no record then: nobody outside can make one, and nothing copies it.
        foreach (Type type in new[] { typeof(Joint), typeof(FinalPoint), typeof(Lugwork.Reading.SpecValue), typeof(Lugwork.Reading.SpecDoubt) })
        {
            Assert.Empty(type.GetConstructors());
            Assert.Null(type.GetMethod("<Clone>$"));
        }
    }

    [Fact]
    public void A_row_of_a_relation_can_be_made_from_a_database()
    {
        PartFitRow row = FitRelations.OfPart(7, Seatpost.Read("27.2 x 350"), Slot.Seatpost)[1];
        Assert.Equal(row, new(row.PartId, row.SlotKey, row.JointId, row.Key, row.LimitMin, row.LimitMax));
    }

    [Fact]
    public void No_part_can_be_made_of_a_kind_that_the_library_has_not()
    {
        Assert.Contains(typeof(Part).GetProperties(BindingFlags.NonPublic | BindingFlags.Instance), p => p.GetMethod is { IsAbstract: true, IsFamilyAndAssembly: true });
        Assert.All(Public.Where(t => t.IsSubclassOf(typeof(Part))), t => Assert.True(t.IsSealed, t.Name));
    }

    [Fact]
    public void What_was_compared_says_whose_it_is_and_what_its_field_is_called()
    {
        Fit fit = Build.From(Frame.Read("seat tube 27.2")).With(Seatpost.Read("26.8 x 350") with { Name = "the old post" }).Check().Findings.Single(f => f.Joint!.Id == "seatpost-in-seat-tube");
        Assert.Equal(["frame seatTube", "seatpost diameter"], fit.Compared.Select(c => $"{c.Slot.Key} {c.Field}"));
        Assert.Equal("seatpost (the old post): seatpost diameter 26.8", fit.Compared[1].ToString());
        Assert.Equal(EvidenceKind.Stated, fit.Compared[1].Evidence!.Kind);
        Assert.Empty(default(Fit).Compared);
    }

    [Theory]
    [InlineData(Verdict.Fits, Verdict.NeedsPart, true)]
    [InlineData(Verdict.NeedsPart, Verdict.NeedsPart, true)]
    [InlineData(Verdict.NeedsMeasuring, Verdict.NeedsPart, false)]
    [InlineData(Verdict.NotJudged, Verdict.Fits, false)]
    [InlineData(Verdict.NotJudged, Verdict.NeedsPart, false)]
    [InlineData(Verdict.NotJudged, Verdict.NeedsMeasuring, true)]
    [InlineData(Verdict.NeedsMeasuring, Verdict.NotJudged, true)]
    [InlineData(Verdict.NotJudged, Verdict.NotJudged, true)]
    [InlineData(Verdict.DoesNotFit, Verdict.NotJudged, false)]
    [InlineData(Verdict.Unsafe, Verdict.DoesNotFit, false)]
    public void What_was_not_judged_is_no_better_than_what_needs_measuring(Verdict verdict, Verdict worst, bool expected)
    {
        Assert.Equal(expected, verdict.IsNoWorseThan(worst));
    }

    [Fact]
    public void A_default_size_has_no_bead_seat_and_no_style_and_says_so_as_an_operation()
    {
        Assert.Throws<InvalidOperationException>(() => default(Lugwork.Tyres.TyreSize).Bead);
        Assert.Throws<InvalidOperationException>(() => default(Lugwork.Tyres.RimSize).Bead);
        Assert.Throws<InvalidOperationException>(() => default(Lugwork.Steering.HeadsetHalf).Style);
    }

    [Fact]
    public void A_source_is_found_by_its_id()
    {
        Assert.All(Sources.All, s => Assert.Same(s, Sources.Find(s.Id.ToLowerInvariant())));
        Assert.Null(Sources.Find("no such page"));
        Assert.Equal(["All", "CommonPractice", "Derived", "Memory"], typeof(Sources).GetProperties(BindingFlags.Public | BindingFlags.Static).Select(p => p.Name).Order(StringComparer.Ordinal));
    }

    /// <summary>A constant is copied into the programs that use it, and theirs stays as it was when the library changes.</summary>
    [Fact]
    public void No_text_and_no_limit_that_may_change_is_a_constant()
    {
        string[] kept = ["AnyPart", "AskedPart", "Check", "GeneralAllowancePitches", "Measure", "NeedsBuyingPart", "NoLimit", "RefusedPart", "UsualMillimetres", "UsualTolerancePercent"];
        Assert.Equal(kept, Public.Where(t => !t.IsEnum).SelectMany(t => t.GetFields(BindingFlags.Public | BindingFlags.Static)).Where(f => f.IsLiteral).Select(f => f.Name).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Every_way_to_cancel_has_the_same_name()
    {
        Assert.All(Public.SelectMany(t => t.GetMethods()).SelectMany(m => m.GetParameters()).Where(p => p.ParameterType == typeof(CancellationToken)), p => Assert.Equal("cancellationToken", p.Name));
    }
}
