namespace Lugwork.PublishedTables;

/// <summary>Cassettes on freehub bodies, each case from the source beside it; the figure is the spacer behind the cassette.</summary>
public sealed class CassetteChecks
{
    [Theory]
    [InlineData("Freehub types, standards for road and MTB wheels; Cyclabo; 2023", "HG-7", "HG-S", Verdict.Fits, "")]
    [InlineData("Cassette FAQ; BikeRadar forum; 2013", "HG-7", "HG-M", Verdict.NeedsPart, "4.5")]
    [InlineData("Cassette FAQ; BikeRadar forum; 2013", "HG-7", "HG-L", Verdict.NeedsPart, "6.35")]
    [InlineData("Freehub types, standards for road and MTB wheels; Cyclabo; 2023", "HG-8", "HG-M", Verdict.Fits, "")]
    [InlineData("Freehub types, standards for road and MTB wheels; Cyclabo; 2023", "HG-8", "HG-L", Verdict.NeedsPart, "1.85")]
    [InlineData("Freehub types, standards for road and MTB wheels; Cyclabo; 2023", "HG-8", "HG-S", Verdict.DoesNotFit, "")]
    [InlineData("Freehub types, standards for road and MTB wheels; Cyclabo; 2023", "HG-9", "HG-M", Verdict.Fits, "")]
    [InlineData("Freehub types, standards for road and MTB wheels; Cyclabo; 2023", "HG-9", "HG-L", Verdict.NeedsPart, "1.85")]
    [InlineData("Freehub types, standards for road and MTB wheels; Cyclabo; 2023", "HG-10", "HG-M", Verdict.Fits, "")]
    [InlineData("Freehub types, standards for road and MTB wheels; Cyclabo; 2023", "HG-10", "HG-L", Verdict.NeedsPart, "1.85")]
    [InlineData("Freehub types, standards for road and MTB wheels; Cyclabo; 2023", "HG-10-old-road", "HG-M", Verdict.NeedsPart, "1")]
    [InlineData("Freehub types, standards for road and MTB wheels; Cyclabo; 2023", "HG-10-old-road", "HG-L", Verdict.NeedsPart, "2.85")]
    [InlineData("Guide for 11-speed, 12-speed and MS freehubs; ICAN Cycling; undated", "HG-10-old-road", "HG-10only", Verdict.Fits, "")]
    [InlineData("Guide for 11-speed, 12-speed and MS freehubs; ICAN Cycling; undated", "HG-10", "HG-10only", Verdict.NeedsMeasuring, "")]
    [InlineData("Freehub types, standards for road and MTB wheels; Cyclabo; 2023", "HG-11-wide", "HG-M", Verdict.Fits, "")]
    [InlineData("Freehub types, standards for road and MTB wheels; Cyclabo; 2023", "HG-11-wide", "HG-L", Verdict.NeedsPart, "1.85")]
    [InlineData("Freehub types, standards for road and MTB wheels; Cyclabo; 2023", "HG-11-road", "HG-L", Verdict.Fits, "")]
    [InlineData("Freehub types, standards for road and MTB wheels; Cyclabo; 2023", "HG-11-road", "HG-M", Verdict.DoesNotFit, "")]
    [InlineData("Freehub types, standards for road and MTB wheels; Cyclabo; 2023", "HG-11-road", "HG-L2", Verdict.DoesNotFit, "")]
    [InlineData("Freehub types, standards for road and MTB wheels; Cyclabo; 2023", "HG-12-road", "HG-L2", Verdict.Fits, "")]
    [InlineData("Freehub types, standards for road and MTB wheels; Cyclabo; 2023", "HG-12-road", "HG-L", Verdict.Fits, "")]
    [InlineData("Freehub types, standards for road and MTB wheels; Cyclabo; 2023", "HG-12-road", "HG-M", Verdict.DoesNotFit, "")]
    [InlineData("Cassette total widths (table); brainybiker.com; undated", "HG-12-fit", "HG-M", Verdict.Fits, "")]
    [InlineData("12-speed cassette on an 11-speed hub; brainybiker.com; undated", "HG-12-fit", "HG-L", Verdict.NeedsPart, "1.85")]
    [InlineData("Freehub types, standards for road and MTB wheels; Cyclabo; 2023", "MS-12", "MS", Verdict.Fits, "")]
    [InlineData("Cassette total widths (table); brainybiker.com; undated", "MS-12", "HG-M", Verdict.DoesNotFit, "")]
    [InlineData("Freehub types, standards for road and MTB wheels; Cyclabo; 2023", "MS-12", "HG-L", Verdict.DoesNotFit, "")]
    [InlineData("XD driver body explained (BikeRadar text, republished); BikeRadar copy; 2015", "XD", "XD", Verdict.Fits, "")]
    [InlineData("XDR freehub body explained; Bikerumor; 2017", "XD", "XDR", Verdict.NeedsPart, "1.85")]
    [InlineData("HG vs Micro Spline vs road 12-speed vs XDR freehub body (measured side by side); handsonbike.blogspot.com; 2022", "XD", "HG-M", Verdict.DoesNotFit, "")]
    [InlineData("XDR freehub body explained; Bikerumor; 2017", "XDR", "XDR", Verdict.Fits, "")]
    [InlineData("XDR freehub body explained; Bikerumor; 2017", "XDR", "XD", Verdict.DoesNotFit, "")]
    [InlineData("8-spline freehub bodies: which do you have?; Branford Bike; undated", "8-spline-9", "C9-12", Verdict.Fits, "")]
    [InlineData("8-spline freehub bodies: which do you have?; Branford Bike; undated", "8-spline-10-12", "C9-12", Verdict.Fits, "")]
    [InlineData("1x13 gravel group and the N3W body; cbnanashi blog; chan-bike.com", "8-spline-10-12", "N3W", Verdict.NeedsPart, "4.4")]
    [InlineData("1x13 gravel group and the N3W body; cbnanashi blog; chan-bike.com", "8-spline-13", "N3W", Verdict.Fits, "")]
    [InlineData("1x13 gravel group and the N3W body; cbnanashi blog; chan-bike.com", "8-spline-13", "C9-12", Verdict.DoesNotFit, "")]
    [InlineData("Freehub / cassette page; Rol Wheels; undated", "8-spline-9", "HG-M", Verdict.DoesNotFit, "")]
    [InlineData("Freehub / cassette page; Rol Wheels; undated", "8-spline-10-12", "HG-M", Verdict.DoesNotFit, "")]
    [InlineData("Freehub / cassette page; Rol Wheels; undated", "HG-7", "C9-12", Verdict.DoesNotFit, "")]
    [InlineData("Freehub / cassette page; Rol Wheels; undated", "HG-9", "C9-12", Verdict.DoesNotFit, "")]
    [InlineData("Freehub / cassette page; Rol Wheels; undated", "HG-11-road", "C9-12", Verdict.DoesNotFit, "")]
    [InlineData("Traditional Thread-on Freewheels; sheldonbrown.com; undated", "HG-9", "FW-thread", Verdict.DoesNotFit, "")]
    [InlineData("Traditional Thread-on Freewheels; sheldonbrown.com; undated", "XD", "FW-thread", Verdict.DoesNotFit, "")]
    [InlineData("Traditional Thread-on Freewheels; sheldonbrown.com; undated", "8-spline-13", "FW-thread", Verdict.DoesNotFit, "")]
    [InlineData("Traditional Thread-on Freewheels; sheldonbrown.com; undated", "freewheel", "HG-M", Verdict.DoesNotFit, "")]
    [InlineData("Traditional Thread-on Freewheels; sheldonbrown.com; undated", "freewheel", "XD", Verdict.DoesNotFit, "")]
    public void A_cassette_goes_on_a_body_as_published(string source, string cassette, string body, Verdict expected, string spacer)
    {
        Assert.NotEmpty(source);
        Fit fit = Case.Judge("cassette-on-freehub-body", "material steel", (Slot.RearWheel, Wheel.Read($"body {body}")), (Slot.Cassette, Cassette.Read($"pattern {cassette}")));
        Case.Expect(expected, spacer, fit);
    }
}
