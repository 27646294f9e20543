using Lugwork.Reading;

namespace Lugwork.Tests.Reading;

public sealed class SpecQuestionsTests
{
    [Fact]
    public void What_is_known_is_not_asked_and_what_settles_most_comes_first()
    {
        Frame half = Frame.Read("rear 12x142; seat tube 27.2");
        RankedMeasurement[] questions = [.. SpecQuestions.Of(half)];
        Assert.NotEmpty(questions);
        Assert.DoesNotContain(questions, q => q.What.Field is "rear" or "seatTube");
        Assert.All(questions, q => Assert.Equal(Slot.Frame, q.What.Slot));
        Assert.Equal(questions.OrderByDescending(q => q.Settles).ThenByDescending(q => q.Touches).Select(q => q.What.Field), questions.Select(q => q.What.Field));
    }

    [Fact]
    public void An_answer_takes_its_question_away()
    {
        Frame frame = Frame.Read("rear 12x142");
        Assert.Contains(SpecQuestions.Of(frame), q => q.What.Field == "seatTube");
        SpecAnswer taken = SpecQuestions.Answer(frame, "seatTube", "27,2 mm");
        (Frame answered, SpecLine line) = (taken.Frame, taken.Line);
        Assert.Equal(SpecOutcome.Read, line.Outcome);
        Assert.Equal("27.2", answered.SeatTubeBore.Value.FitKey);
        Assert.Equal("R142-12", answered.RearEnd.Value.FitKey);
        Assert.DoesNotContain(SpecQuestions.Of(answered), q => q.What.Field == "seatTube");
    }

    [Fact]
    public void An_answer_in_doubt_changes_nothing()
    {
        Frame frame = Frame.Read("rear 12x142");
        SpecAnswer taken = SpecQuestions.Answer(frame, "seatTube", "27.2 or 31.6");
        (Frame same, SpecLine line) = (taken.Frame, taken.Line);
        Assert.NotEqual(SpecOutcome.Read, line.Outcome);
        Assert.Equal(frame, same);
    }

    [Fact]
    public void A_question_without_an_answer_in_the_frame_is_refused() =>
        Assert.Throws<ArgumentException>(() => SpecQuestions.Answer(new Frame(), "diameter", "27.2"));
}
