using Lugwork.Reading;

namespace Lugwork.Tests.Reading;

public sealed class SpecVocabularyTests
{
    [Fact]
    public void A_word_of_the_users_own_names_a_field()
    {
        Assert.NotEqual(SpecOutcome.Read, SpecLine.Read(Slot.Frame, "stolpe 27,2 mm").Outcome);
        SpecVocabulary own = SpecVocabulary.Default.With("stolpe", Slot.Frame, "seatTube");
        SpecValue value = Assert.Single(SpecLine.Read(Slot.Frame, "Stolpe 27,2 mm", own).Values);
        Assert.Equal(("seatTube", "27.2", "27,2 mm"), (value.Field, value.Key, value.Words));
        Assert.NotEqual(SpecOutcome.Read, SpecLine.Read(Slot.Frame, "stolpe 27,2 mm").Outcome);
    }

    [Fact]
    public void A_word_of_the_users_own_is_a_value()
    {
        SpecVocabulary own = SpecVocabulary.Default.WithValue("vikbart", Slot.FrontTyre, "bead", "folding");
        Assert.Equal("frontTyre.bead=folding frontTyre.size=37-622", SpecLineLaws.Told(SpecLine.Read(Slot.FrontTyre, "37-622 vikbart", own)));
    }

    [Fact]
    public void A_word_of_noise_takes_its_figure_away()
    {
        SpecVocabulary own = SpecVocabulary.Default.WithNoise("dropphojd");
        Assert.NotEqual(SpecOutcome.Read, SpecLine.Read(Slot.Handlebar, "31.8 / 35").Outcome);
        Assert.Equal("handlebar.clamp=31.8", SpecLineLaws.Told(SpecLine.Read(Slot.Handlebar, "31.8 mm, dropphojd 35", own)));
    }

    [Fact]
    public void Words_for_what_is_not_there_are_refused()
    {
        Assert.Throws<ArgumentException>(() => SpecVocabulary.Default.With("stolpe", Slot.Frame, "diameter"));
        Assert.Throws<ArgumentException>(() => SpecVocabulary.Default.With(" ", Slot.Frame, "seatTube"));
        Assert.Throws<ArgumentException>(() => SpecVocabulary.Default.WithValue("stolpe", Slot.Frame, "shell", "T47"));
    }
}
