using Lugwork.Tests.Architecture;

namespace Lugwork.Tests.Fits;

/// <summary>A length that is not known, or known between two ends, is judged as what all its values have in common; the places where the answer changes are found by halving, not by what a relation says of itself.</summary>
public sealed class OpenLengthLaws
{
    private const int Draws = 10;

    public static TheoryData<string> Joints => [.. JointTable.All.Where(j => j.Inputs.Any(i => i.IsLength)).Select(j => j.Id)];

    [Theory]
    [MemberData(nameof(Joints))]
    public void An_open_length_says_what_its_values_have_in_common(string id)
    {
        Joint joint = JointTable.All.Single(j => j.Id == id);
        for (int draw = 0; draw < Draws; draw++)
        {
            for (int length = 0; length < joint.Inputs.Length; length++)
            {
                if (joint.Inputs[length].IsLength)
                {
                    (long[] row, long[] places) = VerdictRecord.PlacesOf(joint, draw, length);
                    Holds(joint, row, length, places);
                }
            }
        }
    }

    private static void Holds(Joint joint, long[] row, int length, long[] places)
    {
        Verdict At(long value)
        {
            long[] at = [.. row];
            at[length] = value;
            return joint.Relation.Judge(at).Verdict;
        }

        Verdict all = places.Select(At).Aggregate(Joint.Either);

        // Halving may miss a narrow place that a relation knows: then it asks where all values that were found say one thing.
        Expect(joint, row, length, default, all, Verdict.NeedsMeasuring);

        for (int i = 0; i < places.Length; i++)
        {
            long last = i + 1 < places.Length ? places[i + 1] - 1 : places[i] + 1_000;
            Expect(joint, row, length, Between(places[i], last), At(places[i]));
            if (i > 0)
            {
                Expect(joint, row, length, Between(places[i] - 1, places[i]), Joint.Either(At(places[i] - 1), At(places[i])));
                Expect(joint, row, length, Between(places[i - 1], last), Joint.Either(At(places[i - 1]), At(places[i])));
            }
        }
    }

    private static Candidates Between(long low, long high) => low == high ? new(KnownState.Value, low, low, null) : new(KnownState.Measured, low, high, null);

    private static void Expect(Joint joint, long[] row, int length, Candidates open, params Verdict[] expected)
    {
        Rows.Row asked = new(joint, [.. row.Select((v, i) => i == length ? open : v == 0 ? Rows.None : new Candidates(KnownState.Value, v, v, null))]);
        Verdict found = asked.Common();
        Assert.True(expected.Contains(found), $"{asked}: {found}, its values have {expected[0]} in common");
    }
}
