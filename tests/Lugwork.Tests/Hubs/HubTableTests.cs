using Lugwork.Hubs;

namespace Lugwork.Tests.Hubs;

public sealed class HubTableTests
{
    private static HubStandard Hub(string key) => HubStandard.Parse(key, null);

    [Fact]
    public void Every_standard_has_a_row_of_details()
    {
        foreach (HubStandard hub in HubStandard.All)
        {
            Assert.NotEmpty(hub.Attachments);
            Assert.Equal(hub.IsRear, hub.DriveSideShift is not null);
            Assert.Equal(hub.EndCap is null, hub.EndCapSource is null);
            Assert.Equal(hub.Axles.Length, hub.AxleDiameters.Length);
        }
    }

    [Fact]
    public void The_drive_side_shift_is_half_the_change_of_the_gap_but_where_the_rear_end_is_offset()
    {
        foreach (HubStandard hub in HubStandard.All)
        {
            if (hub.IsRear && hub.FitKey != "R135-OFF")
            {
                double expected = (hub.InnerGap.Millimeters - 135) / 2;
                double shift = hub.DriveSideShift!.Value.Millimeters;
                Assert.True(Math.Abs(expected - shift) < 1e-9, $"{hub}: {shift}, by its gap {expected}");
            }
        }

        Assert.Equal(17.5, Hub("R135-OFF").DriveSideShift!.Value.Millimeters);
    }

    [Theory]
    [InlineData("R142-12", 3.5)]
    [InlineData("R148-12", 3.5)]
    [InlineData("R157-12W", 3.5)]
    [InlineData("R135-QR", 0.0)]
    [InlineData("R150-12", 0.0)]
    [InlineData("F100-QR9", 0.0)]
    [InlineData("F100-15", null)]
    [InlineData("F-OWN", null)]
    public void A_recess_is_told_where_the_gap_is_known(string key, double? recess) => Assert.Equal(recess, Hub(key).RecessPerSide?.Millimeters);

    [Theory]
    [InlineData("F110-20", "F110-20B")]
    [InlineData("R148-12", "R148-12RB")]
    [InlineData("R135-QR", "R135-OFF")]
    [InlineData("F110-15B", "F110-12RB")]
    public void Hubs_of_one_width_are_parted_by_the_place_of_the_rotor(string one, string other)
    {
        Assert.Equal(Hub(one).OverLocknut.Millimeters, Hub(other).OverLocknut.Millimeters);
        Assert.NotEqual(Hub(one).RotorPlaces, Hub(other).RotorPlaces);
    }

    [Theory]
    [InlineData("R135", "R135-QR R135-10 R135-12 R142-12 R135-OFF")]
    [InlineData("R148", "R141-QR R148-12")]
    [InlineData("R150", "R150-12 R150-10 R157-12DH")]
    [InlineData("R157W", "R157-12W")]
    [InlineData("F100", "F100-QR9 F100-TB9 F100-12 F100-15")]
    [InlineData("F110B", "F110-15B F110-15B-31 F110-20B")]
    [InlineData("R170", "R170-QR R177-12")]
    [InlineData("R190", "R190-QR R197-12")]
    public void A_family_names_its_members(string family, string members)
    {
        HubFamily found = HubFamily.Parse(family, null);
        Assert.Equal(members.Split(' ').Order(), found.Members.Select(m => m.FitKey).Order());
        Assert.NotEmpty(found.ConvertedBy);
        Assert.NotEmpty(found.NeverBecomes);
    }

    [Fact]
    public void Every_family_has_a_member_and_a_frame_for_two_widths_has_no_family()
    {
        Assert.All(HubFamily.All, f => Assert.NotEmpty(f.Members));
        Assert.All(new[] { "R132.5", "R145-flex", "R148-12RB", "F-OWN" }, key => Assert.Null(Hub(key).Family));
    }

    [Fact]
    public void End_caps_that_are_carried_over_say_so()
    {
        Assert.Same(Sources.Derived, Hub("R148-12").EndCapSource);
        Assert.Same(Sources.EndCapForum, Hub("F100-12").EndCapSource);
        Assert.Null(Hub("F110-20").EndCap);
    }

    [Fact]
    public void An_axle_of_usual_length_is_20_to_30_mm_longer_than_the_hub_and_the_printed_ones_are()
    {
        foreach (ThruAxleExample example in ThruAxleExample.All)
        {
            LengthRange range = ThruAxleExample.UsualLength(example.Standard);
            (UnitsNet.Length least, UnitsNet.Length most) = (range.Least, range.Most);
            Assert.InRange(example.Length.Millimeters, least.Millimeters, most.Millimeters);
        }

        Assert.Throws<ArgumentException>(() => ThruAxleExample.UsualLength(Hub("R135-QR")));
        Assert.Throws<ArgumentException>(() => ThruAxleExample.UsualLength(Hub("F-OWN")));
        Assert.Equal(7, ThruAxleExample.Asked.Length);
    }

    [Theory]
    [InlineData("3/8", "3/8x26 3/8x24")]
    [InlineData("3/8 in", "3/8x26 3/8x24")]
    [InlineData("5/16\u2033", "5/16x26 5/16x24")]
    [InlineData("3/8 \u00D7 24", "3/8x24")]
    [InlineData("M10 x 1.0", "M10x1")]
    [InlineData("10x1,0", "M10x1")]
    [InlineData("M11x1", "")]
    [InlineData("3/8x25", "")]
    [InlineData("", "")]
    public void Hub_axle_threads_keep_the_doubt_of_a_missing_pitch(string text, string read) => Assert.Equal(read, string.Join(' ', HubAxleThread.Read(text).Values));
}
