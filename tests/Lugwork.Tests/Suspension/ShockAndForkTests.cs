using Lugwork.Suspension;
using Lugwork.Tests.Steering;
using static Lugwork.Tests.Steering.Identifying;

namespace Lugwork.Tests.Suspension;

public sealed class ShockAndForkTests
{
    [Theory]
    [InlineData("210x55", "210x55", Verdict.Fits)]
    [InlineData("210x50", "210x55", Verdict.Unsafe)]
    [InlineData("210x55", "210x52.5", Verdict.NeedsMeasuring)]
    [InlineData("210x55", "trunnion 185x55", Verdict.DoesNotFit)]
    [InlineData("trunnion 185x55", "210x55", Verdict.DoesNotFit)]
    [InlineData("210x55", "230x57.5", Verdict.DoesNotFit)]
    [InlineData("eyelet 165x37.5", "165x38", Verdict.Unsafe)]
    [InlineData("7.875x2.25 in", "200x57", Verdict.Fits)]
    [InlineData("190x45", "190.5x51", Verdict.DoesNotFit)]
    public void A_shock_goes_in_a_frame_for_its_own_size(string frame, string shock, Verdict verdict) =>
        Assert.Equal(verdict, ShockRelations.InFrame.Judge([ShockSize.Parse(frame, null).FitCode, ShockSize.Parse(shock, null).FitCode]).Verdict);

    [Fact]
    public void More_stroke_is_never_milder_than_less_and_every_pair_is_told()
    {
        foreach (ShockSize frame in ShockSize.All)
        {
            foreach (ShockSize shock in ShockSize.All)
            {
                Outcome outcome = ShockRelations.InFrame.Judge([frame.FitCode, shock.FitCode]);
                Assert.NotEmpty(outcome.Reason!.Sources);
                Assert.Equal(frame == shock, outcome.Verdict == Verdict.Fits);
                Assert.Equal(outcome.Verdict == Verdict.Unsafe, frame.Mount == shock.Mount && frame.Eye == shock.Eye && shock.Shaft > frame.Shaft);
            }
        }
    }

    [Theory]
    [InlineData("22.2x8", "22.2x8", Verdict.Fits)]
    [InlineData("24x8", "22.2x8", Verdict.DoesNotFit)]
    [InlineData("22.2x8", "22.2x6", Verdict.DoesNotFit)]
    [InlineData("21.8x8", "22.2x8", Verdict.DoesNotFit)]
    public void Hardware_is_the_frames(string frame, string hardware, Verdict verdict) =>
        Assert.Equal(verdict, ShockRelations.Hardware.Judge([ShockHardware.Parse(frame, null).FitCode, ShockHardware.Parse(hardware, null).FitCode]).Verdict);

    [Theory]
    [InlineData("12.7", "12.7", Verdict.Fits)]
    [InlineData("12", "12.7", Verdict.DoesNotFit)]
    [InlineData("12.7", "12", Verdict.DoesNotFit)]
    public void A_bush_goes_in_the_eyelet_that_it_is_made_for(string eyelet, string bush, Verdict verdict) =>
        Assert.Equal(verdict, ShockRelations.Bush.Judge([ShockBush.Parse(eyelet, null).FitCode, ShockBush.Parse(bush, null).FitCode]).Verdict);

    [Theory]
    [InlineData("single", "single", Verdict.Fits)]
    [InlineData("dual", "single", Verdict.Fits)]
    [InlineData("dual", "dual", Verdict.Fits)]
    [InlineData("single", "dual", Verdict.Unsafe)]
    public void Two_crowns_need_the_frame_makers_word(string frame, string fork, Verdict verdict) =>
        Assert.Equal(verdict, ForkRelations.CrownOnFrame.Judge([CrownType.Parse(frame, null).FitCode, CrownType.Parse(fork, null).FitCode]).Verdict);

    [Fact]
    public void Identifying_holds_for_shocks() =>
        Assert.True(Holds(ShockSize.All, s => [(decimal)s.EyeToEye.Millimeters, (decimal)s.Stroke.Millimeters], r => ShockSize.Identify(r[0], r[1])) > 500);

    [Fact]
    public void Identifying_holds_for_hardware_and_bushes()
    {
        Assert.True(Holds(ShockHardware.All, h => [h.WidthMillimetres, h.BoltMillimetres], r => ShockHardware.Identify(r[0], r[1])) > 300);
        Assert.True(Holds(ShockBush.All, b => [(decimal)b.InsideDiameter.Millimeters, (decimal)b.EyeletBore.Millimeters], r => ShockBush.Identify(r[0], r[1])) > 20);
    }

    [Fact]
    public void Identifying_holds_for_forks()
    {
        Assert.True(Holds(ForkClass.All, f => [(decimal)(f.LeastAxleToCrown.Millimeters + f.MostAxleToCrown.Millimeters) / 2, f.IsSuspension ? (decimal)f.Travel.Millimeters : null], r => ForkClass.Identify(r[0], r[1])) > 300);
        Assert.True(Holds(ForkOffset.All, f => [(decimal)f.Typical.Millimeters], r => ForkOffset.Identify(r[0]!.Value)) > 30);
    }

    [Fact]
    public void A_shock_by_its_length_alone_asks_for_the_stroke()
    {
        Identification<ShockSize> open = ShockSize.Identify(eyeToEye: Mm(210, 1));
        Assert.Equal("eyelet-210x50|eyelet-210x52.5|eyelet-210x55", Keys(open));
        Assert.StartsWith("stroke", open.Next, StringComparison.Ordinal);
        Assert.Equal("eyelet-210x55", Keys(ShockSize.Identify(Mm(210, 1), Mm(55, 1))));
        Assert.Equal("eyelet-165x40|trunnion-165x40", Keys(ShockSize.Identify(Mm(165, 0.5), Mm(40, 0.5))));
        Assert.Contains(ShockSize.Identify(Mm(165, 0.5)).Candidates, c => c.TellsApart.Contains("two screws", StringComparison.Ordinal));
    }

    [Fact]
    public void A_trunnion_is_25_mm_shorter_than_the_eyelet_of_its_stroke()
    {
        foreach (ShockSize trunnion in ShockSize.All.Where(s => s.Mount == ShockMount.Trunnion && s.Shaft > 4500))
        {
            Assert.Contains(ShockSize.All, s => s.IsMetric && s.Mount == ShockMount.Eyelet && s.Shaft == trunnion.Shaft && s.Eye == trunnion.Eye + 2500);
        }

        Assert.Equal(54, ShockMount.Trunnion.Width!.Value.Millimeters);
        Assert.Null(ShockMount.Eyelet.Width);
        Assert.Equal(10, ShockMount.Trunnion.Screw!.Value.Millimeters);
        Assert.Null(ShockMount.Eyelet.Screw);
        Assert.Equal(Sources.Memory, ShockMount.Trunnion.WidthSource);
        Assert.Null(ShockMount.Eyelet.WidthSource);
        Assert.Null(ShockMount.Eyelet.Caution);
        Assert.NotNull(ShockMount.Trunnion.Caution);
    }

    [Fact]
    public void An_inch_size_is_its_inches_rounded()
    {
        foreach (ShockSize size in ShockSize.All.Where(s => !s.IsMetric))
        {
            string[] inches = size.InchName.Replace(" in", "", StringComparison.Ordinal).Split(" x ");
            Assert.InRange(size.EyeToEye.Millimeters - (25.4 * double.Parse(inches[0], System.Globalization.CultureInfo.InvariantCulture)), -0.6, 0.6);
            Assert.InRange(size.Stroke.Millimeters - (25.4 * double.Parse(inches[1], System.Globalization.CultureInfo.InvariantCulture)), -0.6, 0.6);
        }

        Assert.All(ShockSize.All.Where(s => s.IsMetric), s => Assert.Equal("", s.InchName));
    }

    [Fact]
    public void Published_fork_lengths_lie_inside_the_usual_ones() =>
        Assert.All(ForkClass.All.Where(f => f.PublishedSource is not null), f => Assert.True(f.LeastPublished >= f.LeastAxleToCrown && f.MostPublished <= f.MostAxleToCrown && f.LeastPublished <= f.MostPublished, f.FitKey));

    [Fact]
    public void Keys_and_codes_stay()
    {
        Assert.Equal("1 eyelet-165x35;18 eyelet-250x75;19 trunnion-145x35;34 trunnion-225x75;35 eyelet-150x32;49 eyelet-267x89", string.Join(';', new[] { 1, 18, 19, 34, 35, 49 }.Select(c => $"{c} {ShockSize.OfFitCode(c).FitKey}")));
        Assert.Equal(49, ShockSize.All.Length);
        Assert.Equal("1 29-100;9 29-180;10 27.5-100;17 27.5-180;18 26-80;23 26-180;24 27.5-dual-200;26 700c-rim-brake;36 29-rigid-120;37 20-bmx", string.Join(';', new[] { 1, 9, 10, 17, 18, 23, 24, 26, 36, 37 }.Select(c => $"{c} {ForkClass.OfFitCode(c).FitKey}")));
        Assert.Equal(37, ForkClass.All.Length);
        Assert.Equal("1 road;2 gravel;3 29;4 29-short;5 27.5;6 26", string.Join(';', ForkOffset.All.Select(v => $"{v.FitCode} {v.FitKey}")));
        Assert.Equal("1 single;2 dual", string.Join(';', CrownType.All.Select(v => $"{v.FitCode} {v.FitKey}")));
        Assert.Equal("1 eyelet;2 trunnion", string.Join(';', ShockMount.All.Select(v => $"{v.FitCode} {v.FitKey}")));
        Assert.Equal("1 12.7;2 12", string.Join(';', ShockBush.All.Select(v => $"{v.FitCode} {v.FitKey}")));
        Assert.Equal(22_200_800, ShockHardware.Parse("22.2x8", null).FitCode);
    }

    [Fact]
    public void A_fork_has_the_travel_that_its_key_says()
    {
        foreach (ForkClass fork in ForkClass.All)
        {
            string last = fork.FitKey.Split('-')[^1];
            double? said = double.TryParse(last, System.Globalization.CultureInfo.InvariantCulture, out double millimetres) ? millimetres : null;
            Assert.Equal(fork.IsSuspension ? said : null, fork.IsSuspension ? fork.Travel.Millimeters : null);
            Assert.Equal(fork.IsSuspension ? null : said, fork.CorrectedFor?.Millimeters);
            Assert.Equal(fork.IsSuspension, fork.Crown is not null);
            Assert.Equal(fork.FitKey.Contains("dual", StringComparison.Ordinal), fork.Crown == CrownType.Dual);
            Assert.Equal(fork.LeastPublished is null, fork.PublishedSource is null);
            Assert.True(fork.LeastPublished <= fork.MostPublished || fork.LeastPublished is null, fork.FitKey);
        }
    }
}
