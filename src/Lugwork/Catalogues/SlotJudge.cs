namespace Lugwork.Catalogues;

/// <summary>Judges every kind of part of a slot beside other parts: each different answer to a joint once, and by the joint.</summary>
internal sealed class SlotJudge
{
    // Marks of an answer that was not judged yet, and of one to which the joint says nothing because nobody has looked.
    private const byte NotYet = 255;
    private const byte Silent = 254;

    private readonly SlotIndex _index;
    private readonly PortQuestion[] _asked;
    private readonly int _read;
    private readonly Verdict _before;
    private readonly Verdict _worst;

    /// <param name="index">The slot whose parts are judged.</param>
    /// <param name="aim">The slot of which the joints are judged: the same one, or that of a part for which frames are sought.</param>
    /// <param name="beside">The other parts.</param>
    /// <param name="worst">What is worse is not told apart.</param>
    public SlotJudge(SlotIndex index, Slot aim, Func<Slot, Part?> beside, Verdict worst)
    {
        _index = index;
        _worst = worst;
        List<PortQuestion> asked = [];
        for (int number = 0; number < index.Table.Ports.Length; number++)
        {
            JointPort port = index.Table.Ports[number];
            if (Counts(port.Joint, index.Slot, aim) && PortQuestion.Of(port.Joint, number, port.Own, index.Table.Said[number].Count, beside) is { } question)
            {
                asked.Add(question);
                _read = number + 1;
            }
        }

        // What few answers settle comes first: a kind that is refused there is asked nothing more.
        asked.Sort((one, other) => (one.Verdicts.Length, one.Port).CompareTo((other.Verdicts.Length, other.Port)));
        _asked = [.. asked];
        _before = aim == index.Slot ? Verdict.NotJudged : Alone(index.Slot, aim, beside);
    }

    /// <summary>The joints of the slot that is aimed at, and what is said of a part of the index alone, such as its own condition.</summary>
    public static bool Counts(Joint joint, Slot index, Slot aim) => joint.Slots.Contains(aim) || joint.Slots.All(s => s == index);

    /// <summary>The verdict of each kind as a byte; one that is worse than what is asked for is only said to be worse. A kind of which there is no part is not judged.</summary>
    public byte[] Judge(CancellationToken cancellationToken)
    {
        SlotTableView table = _index.Table;
        byte[] verdicts = new byte[table.Count];
        Span<int> said = stackalloc int[_read];
        for (int kind = 0; kind < verdicts.Length; kind++)
        {
            if (_index.CountOf(kind) > 0)
            {
                cancellationToken.ThrowIfCancellationRequested();
                verdicts[kind] = (byte)Of(table, kind, said);
            }
        }

        return verdicts;
    }

    private Verdict Of(SlotTableView table, int kind, Span<int> said)
    {
        ByteReader answers = new(table.AnswersOf(kind), 0);
        Verdict worst = answers.Byte() == 0 ? _before : Verdicts.Worse(Verdict.NeedsMeasuring, _before);
        for (int port = 0; port < said.Length; port++)
        {
            said[port] = (int)answers.Number();
        }

        for (int i = 0; i < _asked.Length && worst <= _worst; i++)
        {
            PortQuestion asked = _asked[i];
            int answer = said[asked.Port];
            byte verdict = asked.Verdicts[answer];
            if (verdict == NotYet)
            {
                asked.Verdicts[answer] = verdict = asked.Judge(table.Said[asked.Port], answer);
            }

            worst = verdict == Silent || (Verdict)verdict <= worst ? worst : (Verdict)verdict;
        }

        return worst;
    }

    /// <summary>What the joints say that take the part that is aimed at and none from the index.</summary>
    private static Verdict Alone(Slot index, Slot aim, Func<Slot, Part?> beside)
    {
        Verdict worst = beside(aim) is { } part && PartAlone.IsAskedAbout(aim, part) ? Verdict.NeedsMeasuring : Verdict.NotJudged;
        foreach (Joint joint in JointTable.All)
        {
            if (joint.Slots.Contains(aim) && !joint.Slots.Contains(index) && PortQuestion.Of(joint, 0, [], 0, beside) is { } asked)
            {
                byte verdict = asked.Judge(default, 0);
                worst = verdict == Silent || (Verdict)verdict <= worst ? worst : (Verdict)verdict;
            }
        }

        return worst;
    }

    /// <summary>A joint with all that the other parts say to it.</summary>
    private sealed class PortQuestion(Joint joint, int port, int[] own, CandidateRow row, uint stated, byte[] verdicts)
    {
        private CandidateRow _row = row;

        public byte[] Verdicts => verdicts;

        /// <summary>Number of the joint among those of the slot.</summary>
        public int Port => port;

        /// <summary>Null where another slot of the joint is empty, or another row speaks in its place.</summary>
        public static PortQuestion? Of(Joint joint, int port, int[] own, int answers, Func<Slot, Part?> beside)
        {
            foreach ((Slot slot, Func<Part, bool> speaks) in joint.GivesWay)
            {
                if (beside(slot) is { } other && speaks(other))
                {
                    return null;
                }
            }

            foreach (Slot slot in joint.Slots)
            {
                // Mostly one is empty, and nothing has to be read.
                if (own.Length == 0 || slot != joint.Inputs[own[0]].Slot)
                {
                    if (beside(slot) is null)
                    {
                        return null;
                    }
                }
            }

            CandidateRow row = default;
            uint stated = 0;
            for (int i = 0; i < joint.Inputs.Length; i++)
            {
                if (own.Contains(i))
                {
                    continue;
                }

                Part part = beside(joint.Inputs[i].Slot)!;
                row[i] = joint.Inputs[i].Read(part);
                stated |= joint.IsOnlyWhereLooked && joint.IsStated(i, part) ? 1u << i : 0;
            }

            byte[] verdicts = new byte[answers];
            Array.Fill(verdicts, NotYet);
            return new(joint, port, own, row, stated, verdicts);
        }

        public byte Judge(PortAnswers answers, int answer)
        {
            uint said = stated;
            if (own.Length > 0)
            {
                said |= answers.Stated(answer);
                ReadOnlySpan<Candidates> inputs = answers[answer];
                for (int i = 0; i < own.Length; i++)
                {
                    _row[own[i]] = inputs[i];
                }
            }

            return joint.IsSeen(said) ? (byte)joint.Common(_row) : Silent;
        }
    }
}
