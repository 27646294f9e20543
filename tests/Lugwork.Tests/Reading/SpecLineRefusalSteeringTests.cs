using Lugwork.Reading;

namespace Lugwork.Tests.Reading;

/// <summary>Words of forks, stems, bars and saddles where they stand with another meaning: another part's tube, a width, what may still be done, what a thing is for.</summary>
public sealed class SpecLineRefusalSteeringTests
{
    [Theory]
    [InlineData("fork", "crown can be turned to 26.4")]
    [InlineData("fork", "crown to be turned to 26.4")]
    [InlineData("fork", "crown turned from 30 to 26.4")]
    [InlineData("fork", "crown not machined, 30 mm")]
    [InlineData("fork", "crown width 30 mm, turned")]
    [InlineData("fork", "tige 1,5")]
    [InlineData("fork", "tige 1.5 kg")]
    [InlineData("fork", "tube 1 1/2 x 26")]
    [InlineData("fork", "bar 31.8 oversize")]
    [InlineData("stem", "quill stem, 25.4 bore")]
    [InlineData("stem", "grips 130 mm")]
    [InlineData("stem", "with grips and bar 31.8")]
    [InlineData("stem", "post 22.2 adapter")]
    [InlineData("headset", "IS42/28.6~")]
    [InlineData("dropper", "cable left outside in the rain")]
    [InlineData("dropper", "el cable queda dentro de la caja")]
    [InlineData("seat clamp", "frame 31.6, collar 34.9")]
    [InlineData("headset", "cono 28,6/38,1")]
    [InlineData("fork", "bike seat 27,0")]
    [InlineData("fork", "crown 30.0 mm wide")]
    [InlineData("fork", "spring seat 26.4")]
    [InlineData("fork", "Krone 30,0 hoch")]
    [InlineData("fork", "horquilla para cuadro con tubo de direcci\u00F3n de 120 mm")]
    [InlineData("fork", "1\" threaded, 150 mm")]
    [InlineData("fork", "canti 26\"/622")]
    [InlineData("stem", "quill to fit steerer 25.4")]
    [InlineData("stem", "quill, steerer 28.6")]
    [InlineData("stem", "Lenker 31,8, Schaft 1\"")]
    [InlineData("stem", "fits 1\" steerer")]
    [InlineData("seatpost", "frame 31.8")]
    [InlineData("seatpost", "frame 27.2, post 26.8 with shim")]
    [InlineData("seatpost", "from a frame 54.0")]
    [InlineData("fork", "race fork 1.5")]
    [InlineData("rear thru-axle", "M12 pitch 1.0 of 1.5")]
    public void Another_meaning_is_not_read(string slot, string text) =>
        Assert.Empty(SpecLine.Read(Slot.All.Single(s => s.Name == slot), text).Values);
}
