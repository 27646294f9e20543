namespace Lugwork.Tests.Fits;

/// <summary>Each kind of relation by itself, on both sides of each boundary.</summary>
public sealed class RelationTests
{
    private static readonly Reason Met = new("met", "met");
    private static readonly Reason Low = new("low", "low");
    private static readonly Reason High = new("high", "high");

    private static Bridge Row(string id, long from, long to, Verdict result = Verdict.NeedsPart, bool chains = true, int input = -1, long code = 0, Verdict otherwise = Verdict.DoesNotFit) => new()
    {
        Id = id, Kind = BridgeKind.Adapter, What = id, Sources = [], From = from, To = to, Result = result, Chains = chains, ConditionInput = input, ConditionCode = code, Otherwise = otherwise,
    };

    private static SameKey Keyed(params Bridge[] bridges) => new(0, 1, Met, (_, _) => Low, [.. bridges], 9);

    /// <summary>A table of more outcomes than there was room for at first keeps all of them.</summary>
    [Fact]
    public void A_table_of_many_outcomes_keeps_each()
    {
        const int Side = 20;
        Cells cells = new(Side, Side);
        Reason[] reasons = [.. Enumerable.Range(0, Side * Side).Select(n => new Reason($"r{n}", "said"))];
        for (int n = 0; n < reasons.Length; n++)
        {
            cells[1 + (n / Side), 1 + (n % Side)] = new(Verdict.Fits, reasons[n]);
        }

        Assert.All(Enumerable.Range(0, reasons.Length), n => Assert.Same(reasons[n], cells[1 + (n / Side), 1 + (n % Side)].Reason));
    }

    /// <summary>An outcome that comes back after another one is still one outcome.</summary>
    [Fact]
    public void A_survey_lists_each_outcome_once()
    {
        OutcomeSurvey survey = new(1);
        Outcome[] turns = [new(Verdict.Fits, Met), new(Verdict.DoesNotFit, Low), new(Verdict.Fits, Met), new(Verdict.Fits, Met), new(Verdict.DoesNotFit, High)];
        for (int i = 0; i < turns.Length; i++)
        {
            survey.Add([i], turns[i]);
        }

        Assert.Equal([turns[0], turns[1], turns[4]], survey.Outcomes);
    }

    [Theory]
    [InlineData(80, 80, Verdict.Fits)]
    [InlineData(81, 80, Verdict.Fits)]
    [InlineData(79, 80, Verdict.Unsafe)]
    [InlineData(1, 0, Verdict.Fits)]
    public void At_least_takes_the_limit_itself(long length, long limit, Verdict verdict)
    {
        AtLeast relation = new(0, 1, Met, Low, Verdict.Unsafe);
        Assert.Equal((verdict, verdict == Verdict.Fits ? Met : Low), (relation.Judge([length, limit]).Verdict, relation.Judge([length, limit]).Reason));
        Assert.Equal(verdict, relation.Settle([length, limit]));
    }

    [Theory]
    [InlineData(180, 180, Verdict.Fits)]
    [InlineData(179, 180, Verdict.Fits)]
    [InlineData(181, 180, Verdict.Unsafe)]
    [InlineData(181, 0, Verdict.NeedsMeasuring)]
    [InlineData(0, 180, Verdict.DoesNotFit)]
    public void At_most_takes_the_limit_itself(long length, long limit, Verdict verdict) =>
        Assert.Equal(verdict, new AtMost(0, 1, Met, High, Verdict.Unsafe, new(Verdict.NeedsMeasuring, Low), needsLength: true).Judge([length, limit]).Verdict);

    [Fact]
    public void None_of_a_length_is_below_every_limit_where_it_is_not_needed() =>
        Assert.Equal(Verdict.Fits, new AtMost(0, 1, Met, High, Verdict.Unsafe, new(Verdict.NeedsMeasuring, Low)).Judge([0, 180]).Verdict);

    [Theory]
    [InlineData(30, 30, 35, "met")]
    [InlineData(35, 30, 35, "met")]
    [InlineData(29, 30, 35, "low")]
    [InlineData(36, 30, 35, "high")]
    [InlineData(1, 0, 35, "met")]
    [InlineData(99, 30, 0, "met")]
    [InlineData(36, 0, 35, "high")]
    [InlineData(29, 30, 0, "low")]
    public void Within_takes_both_limits_and_none_asks_for_nothing(long length, long least, long most, string reason)
    {
        Outcome told = new Within(0, 1, 2, Met, Low, Verdict.NeedsMeasuring, High, Verdict.DoesNotFit).Judge([length, least, most]);
        Assert.Equal((reason, reason == "met" ? Verdict.Fits : reason == "low" ? Verdict.NeedsMeasuring : Verdict.DoesNotFit), (told.Reason!.Id, told.Verdict));
    }

    [Theory]
    [InlineData(5, 5, Verdict.Fits)]
    [InlineData(5, 6, Verdict.DoesNotFit)]
    [InlineData(0, 5, Verdict.DoesNotFit)]
    [InlineData(5, 0, Verdict.DoesNotFit)]
    [InlineData(0, 0, Verdict.DoesNotFit)]
    [InlineData(9, 9, Verdict.NeedsMeasuring)]
    public void The_same_key_mates_and_a_loose_name_settles_nothing(long seat, long part, Verdict verdict) => Assert.Equal(verdict, Keyed().Judge([seat, part]).Verdict);

    [Fact]
    public void A_bridge_goes_one_way()
    {
        SameKey relation = Keyed(Row("a", 1, 2));
        Assert.Equal((Verdict.NeedsPart, "a"), (relation.Judge([2, 1]).Verdict, relation.Judge([2, 1]).Bridge?.Id));
        Assert.Equal(Verdict.DoesNotFit, relation.Judge([1, 2]).Verdict);
        Assert.Equal(["a"], relation.Bridges.Select(b => b.Id));
    }

    [Theory]
    [InlineData(true, true, Verdict.NeedsPart)]
    [InlineData(true, false, Verdict.DoesNotFit)]
    [InlineData(false, true, Verdict.DoesNotFit)]
    public void Two_bridges_make_a_chain_where_both_may(bool first, bool second, Verdict verdict)
    {
        Outcome told = Keyed(Row("a", 1, 2, chains: first), Row("b", 2, 3, chains: second), Row("c", 3, 4)).Judge([3, 1]);
        Assert.Equal(verdict, told.Verdict);
        Assert.Equal(verdict == Verdict.NeedsPart ? "a" : null, told.Bridge?.Id);
        Assert.Equal(verdict == Verdict.NeedsPart ? "b" : null, told.Second?.Id);
    }

    [Fact]
    public void Three_bridges_make_no_chain() => Assert.Equal(Verdict.DoesNotFit, Keyed(Row("a", 1, 2), Row("b", 2, 3), Row("c", 3, 4)).Judge([4, 1]).Verdict);

    [Fact]
    public void A_chain_is_as_bad_as_its_worse_row_and_the_mildest_chain_is_taken()
    {
        Assert.Equal(Verdict.NeedsMeasuring, Keyed(Row("a", 1, 2), Row("b", 2, 3, Verdict.NeedsMeasuring)).Judge([3, 1]).Verdict);
        Assert.Equal("d", Keyed(Row("a", 1, 2), Row("b", 2, 3, Verdict.NeedsMeasuring), Row("c", 1, 4), Row("d", 4, 3)).Judge([3, 1]).Second?.Id);
    }

    [Theory]
    [InlineData(7, Verdict.NeedsPart)]
    [InlineData(8, Verdict.Unsafe)]
    [InlineData(0, Verdict.Unsafe)]
    public void A_row_with_a_condition_asks_its_input(long material, Verdict verdict)
    {
        Outcome told = Keyed(Row("a", 1, 2, input: 2, code: 7, otherwise: Verdict.Unsafe)).Judge([2, 1, material]);
        Assert.Equal(verdict, told.Verdict);
        Assert.Equal(verdict == Verdict.NeedsPart ? "a" : null, told.Bridge?.Id);
    }

    [Fact]
    public void A_condition_on_the_first_input_counts_too_and_one_beyond_the_inputs_does_not_hold()
    {
        Assert.Equal(Verdict.NeedsPart, Keyed(Row("a", 1, 2, input: 0, code: 2)).Judge([2, 1]).Verdict);
        Assert.Equal(Verdict.DoesNotFit, Keyed(Row("a", 1, 2, input: 0, code: 3)).Judge([2, 1]).Verdict);
        Assert.Equal(Verdict.DoesNotFit, Keyed(Row("a", 1, 2, input: 2, code: 0)).Judge([2, 1]).Verdict);
    }

    [Fact]
    public void The_worst_of_all_counts_and_the_first_of_equals_is_told()
    {
        AllOf all = new(new AtLeast(0, 1, Met, Low, Verdict.NeedsMeasuring), new AtMost(0, 2, Met, High, Verdict.DoesNotFit, new(Verdict.Fits, Met)), new AtLeast(0, 3, Met, High, Verdict.NeedsMeasuring));
        Assert.Equal((Verdict.Fits, Verdict.Fits), (all.Judge([5, 4, 6, 5]).Verdict, all.Settle([5, 4, 6, 5])));
        Assert.Equal((Verdict.DoesNotFit, Verdict.DoesNotFit), (all.Judge([7, 8, 6, 9]).Verdict, all.Settle([7, 8, 6, 9])));
        Assert.Equal("low", all.Judge([5, 6, 6, 6]).Reason!.Id);
    }

    [Fact]
    public void A_table_of_cells_has_each_pair_and_nothing_beside()
    {
        Cells cells = new(2, 3);
        foreach ((long row, long column) in new (long, long)[] { (1, 1), (1, 2), (1, 3), (2, 1), (2, 2) })
        {
            cells[row, column] = new(Verdict.NeedsPart, new Reason($"{row}{column}", ""));
        }

        Assert.Equal(["11", "12", "13", "21", "22"], new[] { cells[1, 1], cells[1, 2], cells[1, 3], cells[2, 1], cells[2, 2] }.Select(c => c.Reason!.Id));
        Assert.Throws<ArgumentOutOfRangeException>(() => cells[2, 3]);
        Assert.Throws<ArgumentOutOfRangeException>(() => cells[0, 1]);
        Assert.Throws<ArgumentOutOfRangeException>(() => cells[1, 0]);
        Assert.Throws<ArgumentOutOfRangeException>(() => cells[3, 1]);
        Assert.Throws<ArgumentOutOfRangeException>(() => cells[1, 4]);
    }

    [Theory]
    [InlineData(Verdict.NotJudged, Verdict.Fits, Verdict.NeedsMeasuring)]
    [InlineData(Verdict.NotJudged, Verdict.NotJudged, Verdict.NeedsMeasuring)]
    [InlineData(Verdict.NotJudged, Verdict.DoesNotFit, Verdict.DoesNotFit)]
    [InlineData(Verdict.NeedsPart, Verdict.Fits, Verdict.NeedsPart)]
    [InlineData(Verdict.Unsafe, Verdict.DoesNotFit, Verdict.Unsafe)]
    public void What_was_not_judged_counts_as_needs_measuring(Verdict first, Verdict second, Verdict worse)
    {
        Assert.Equal(worse, Verdicts.Worse(first, second));
        Assert.Equal(worse, Verdicts.Worse(second, first));
    }
}
