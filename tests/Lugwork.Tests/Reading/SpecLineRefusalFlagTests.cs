using Lugwork.Reading;

namespace Lugwork.Tests.Reading;

/// <summary>Flags of an export and signs that say of a name that it is not there, and comparisons that are no limit.</summary>
public sealed class SpecLineRefusalFlagTests
{
    [Theory]
    [InlineData("frame", "UDH: 0")]
    [InlineData("frame", "UDH;0")]
    [InlineData("frame", "UDH 0")]
    [InlineData("frame", "UDH: N")]
    [InlineData("frame", "UDH: n/a")]
    [InlineData("frame", "UDH: -")]
    [InlineData("frame", "UDH: false")]
    [InlineData("frame", "UDH: FALSCH")]
    [InlineData("frame", "UDH \u274C")]
    [InlineData("frame", "\u2717 UDH")]
    [InlineData("frame", "\u2610 UDH")]
    [InlineData("frame", "UDH \u2716")]
    [InlineData("frame", "ISCG05: 0")]
    [InlineData("rear wheel", "Center Lock: 0")]
    [InlineData("rear wheel", "XD | n")]
    [InlineData("seatpost", "27.2+")]
    [InlineData("rear tyre", "50-622+")]
    [InlineData("frame", "post mount M6")]
    [InlineData("frame", "PM M6")]
    [InlineData("frame", "Swiss BB30 73 Italian")]
    [InlineData("frame", "BB30 73 Italian")]
    [InlineData("frame", "Swiss BSA 68")]
    [InlineData("front brake lever", "olio min., DOT 5.1")]
    [InlineData("fork", "un disco pi\u00F9 grande di 180")]
    [InlineData("fork", "disco m\u00E1s grande que 180")]
    [InlineData("fork", "no quiero un disco mayor de 180")]
    [InlineData("fork", "ich will keine Scheibe gr\u00F6\u00DFer als 180")]
    [InlineData("fork", "ik wil geen schijf groter dan 180")]
    [InlineData("fork", "je ne veux pas de disque plus grand que 180")]
    [InlineData("fork", "non voglio un disco pi\u00F9 grande di 180")]
    [InlineData("fork", "I can't recall a rotor bigger than 180")]
    [InlineData("fork", "won't ride a rotor bigger than 180")]
    [InlineData("fork", "can't go wrong with a rotor over 180")]
    public void What_is_not_there_or_no_limit_is_not_read(string slot, string text) =>
        Assert.Empty(SpecLine.Read(Slot.All.Single(s => s.Name == slot), text).Values);

    [Theory]
    [InlineData("frame", "UDH: 1", "UDH")]
    [InlineData("frame", "UDH \u2713", "UDH")]
    [InlineData("bottom bracket", "calotte PF30 a pressione", "PF30")]
    [InlineData("frame", "PF30 a pressare, 68", "PF30-68")]
    [InlineData("frame", "insert filet\u00E9 de patte : M12 au pas de 1,75 (axe traversant)", "M12x1.75")]
    [InlineData("frame", "12\u2716148", "R148-12")]
    [InlineData("frame", "12 \u2716 148 mm", "R148-12")]
    [InlineData("frame", "UDH, 0 km", "UDH")]
    [InlineData("frame", "won't take a tyre wider than 50-622", "50-622")]
    [InlineData("fork", "won't take a rotor bigger than 180", "180")]
    [InlineData("fork", "cannot take rotors over 180", "180")]
    [InlineData("fork", "nimmt keine gr\u00F6\u00DFere Scheibe als 180", "180")]
    [InlineData("fork", "no acepta un disco mayor de 180", "180")]
    [InlineData("fork", "un disco pi\u00F9 grande di 180 non ci sta", "180")]
    public void What_is_said_to_be_there_is(string slot, string text, string key) =>
        Assert.Equal(key, Assert.Single(SpecLine.Read(Slot.All.Single(s => s.Name == slot), text).Values).Key);
}
