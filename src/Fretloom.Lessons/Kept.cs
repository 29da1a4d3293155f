using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace Fretloom.Lessons;

/// <summary>Answers that were worked out before. One that was not asked for in a while is forgotten. For one thread at a time.</summary>
internal sealed class Kept<TQuestion, TAnswer>
    where TQuestion : notnull
{
    // While a sentence is typed it is good and bad in turn: what stands after it is asked for in the one way and in the other.
    private const int Rounds = 32;

    private readonly Dictionary<TQuestion, (TAnswer Answer, int Round)> _known = [];
    private int _round;

    /// <summary>Begins another round; what was asked for in none of the last 32 is forgotten.</summary>
    public void NextRound()
    {
        _round++;
        foreach (var (question, (_, asked)) in _known)
        {
            if (asked < _round - Rounds)
            {
                _known.Remove(question);
            }
        }
    }

    /// <summary>The answer to a question, worked out if it is not known.</summary>
    public TAnswer Of(TQuestion question, Func<TQuestion, TAnswer> work)
    {
        // Questions are whole sentences: they are hashed once.
        ref var known = ref CollectionsMarshal.GetValueRefOrNullRef(_known, question);
        if (!Unsafe.IsNullRef(ref known))
        {
            known.Round = _round;
            return known.Answer;
        }

        var answer = work(question);
        _known[question] = (answer, _round);
        return answer;
    }
}
