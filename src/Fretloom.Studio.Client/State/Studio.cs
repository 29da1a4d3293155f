using Fretloom.Exhibits;
using Fretloom.Neck;
using Fretloom.Sentences;
using Fretloom.Shapes;

namespace Fretloom.Studio.Client.State;

/// <summary>What is seen: the sentence, and what comes of it.</summary>
public sealed class Studio
{
    /// <summary>The sentence a new studio begins with.</summary>
    public const string FirstSentence = "show the notes of the key and the landmarks";

    private readonly History _history;
    private readonly Kept<string, SentenceResult<Exhibit>> _answers = new();

    // Read again when it is asked for: after the neck is painted.
    private ShowSentence? _said;

    // Worked out when it is looked at: an address may say something else first.
    private Exhibit? _exhibit;

    /// <summary>Begins with the first sentence.</summary>
    /// <param name="history">Where steps are noted.</param>
    public Studio(History history) => _history = history;

    /// <summary>Raised when something else is to be seen.</summary>
    public event Action? Changed;

    /// <summary>Whether what is seen now is only passed through: typed, or come to from outside; false for a step of the teacher's.</summary>
    public bool IsPassing { get; private set; } = true;

    /// <summary>Raised when something is tried on the neck, or no more.</summary>
    public event Action? Trying;

    /// <summary>Raised when something may be seen soon.</summary>
    public event Action<Exhibit>? Foreseen;

    /// <summary>What is tried on the neck, before it is said; null when nothing is.</summary>
    public Exhibit? Tried { get; private set; }

    /// <summary>What is looked at.</summary>
    public View View { get; private set; } = new(FirstSentence);

    /// <summary>What the sentence leaves unsaid: from the lesson that is open.</summary>
    public ShowDefaults Defaults { get; private set; } = ShowDefaults.Standard;

    /// <summary>What that lesson says of itself above its text; empty for none.</summary>
    public string Above { get; private set; } = "";

    /// <summary>What there is to see: of the sentence, or of the last one that could be read.</summary>
    public Exhibit Exhibit => _exhibit ??= Answer(FirstSentence).Value!;

    /// <summary>The sentence of <see cref="Exhibit"/>, as it was said.</summary>
    public string ReadText { get; private set; } = FirstSentence;

    /// <summary>The sentence of <see cref="Exhibit"/>, read.</summary>
    public ShowSentence Said => _said ??= ShowParser.Parse(ReadText).Value!;

    /// <summary>What is wrong with the sentence; null when nothing is.</summary>
    public SentenceError? Error { get; private set; }

    /// <summary>The spots chosen by hand, as a shape; null when none are, or they do not lie on this instrument.</summary>
    public ShapeByHand? Built { get; private set; }

    /// <summary>The shape that is brought out on the neck: that in hand, else one of the sentence's; null for none.</summary>
    public Shape? Shape =>
        Built?.Shape
        ?? (View.ShapeAt is { } at && Exhibit.Shapes is { } shapes && at < shapes.Count ? shapes[at] : null);

    /// <summary>The twin of that shape, far string first; null where it has none.</summary>
    public ValueList<Spot>? Twin => Shape is { } shape ? Shapes.Twin.Of(shape, Exhibit.Map) : null;

    /// <summary>Raised when a block is to be put into the lesson: its kind and its sentence.</summary>
    public event Action<string, string>? Inserting;

    /// <summary>Puts a block into the lesson where it is being written.</summary>
    /// <param name="kind"><c>show</c>, <c>claim</c> or <c>play</c>.</param>
    /// <param name="sentence">What it says.</param>
    public void Insert(string kind, string sentence) => Inserting?.Invoke(kind, sentence);

    /// <summary>Takes a spot into the shape in hand, or out of it.</summary>
    /// <param name="spot">The spot.</param>
    /// <param name="name">What the step is called.</param>
    public void Toggle(Spot spot, string name)
    {
        // Spots of another instrument are let go.
        var before = View.Built.Where(Exhibit.Map.Instrument.Has).ToList();
        var built = before.Contains(spot) ? before.Where(other => other != spot) : before.Append(spot);
        Look(View with { Built = built.ToValueList(), ShapeAt = null }, name);
    }

    /// <summary>Works a sentence out; one that was asked for not long ago is still known.</summary>
    public SentenceResult<Exhibit> Answer(string sentence) =>
        _answers.Of(sentence, () => ShowQuestion.Answer(sentence, Defaults));

    /// <summary>Says another sentence.</summary>
    /// <param name="sentence">The sentence; it need not be right.</param>
    /// <param name="name">What the step is called.</param>
    public void Say(string sentence, string name) => Look(new View(sentence, View.Built), name);

    /// <summary>Tries a sentence on the neck alone, without saying it.</summary>
    /// <param name="sentence">The sentence; null to leave off. One that cannot be read leaves the neck as it is.</param>
    public void Try(string? sentence)
    {
        var tried = sentence is null ? null : Answer(sentence).Value;
        if (!ReferenceEquals(tried, Tried))
        {
            Tried = tried;
            Trying?.Invoke();
        }
    }

    /// <summary>Makes ready what may be said soon.</summary>
    /// <returns>What would be seen; null for a sentence that cannot be read.</returns>
    public Exhibit? Foresee(string sentence)
    {
        var exhibit = Answer(sentence).Value;
        if (exhibit is not null)
        {
            Foreseen?.Invoke(exhibit);
        }

        return exhibit;
    }

    /// <summary>Looks at something else. A step that can be taken back.</summary>
    public void Look(View view, string name)
    {
        var before = View;
        if (view == before)
        {
            return;
        }

        Show(view, isPassing: false);
        _history.Note(new Step(name, () => Show(before, isPassing: false), () => Show(view, isPassing: false)));
    }

    /// <summary>Looks at something without making a step: when the address says so, or while something is typed.</summary>
    /// <param name="view">What is looked at.</param>
    /// <param name="otherwise">What is seen while its sentence cannot be read; null for the last one that could be.</param>
    public void Set(View view, View? otherwise = null)
    {
        if (otherwise is not null && !Answer(view.Sentence).IsRead && Answer(otherwise.Sentence).IsRead)
        {
            (_exhibit, ReadText, _said) = (Answer(otherwise.Sentence).Value, otherwise.Sentence, null);
        }

        Show(view, isPassing: true);
    }

    /// <summary>Takes other words for granted: another lesson is open, or says something else of itself.</summary>
    /// <param name="defaults">What is left unsaid.</param>
    /// <param name="above">What the lesson says above its text, from which they come; empty for none.</param>
    public void Assume(ShowDefaults defaults, string above = "")
    {
        Above = above;
        if (defaults != Defaults)
        {
            (Defaults, IsPassing) = (defaults, true);
            _answers.Clear();
            Follow(isNew: true);
        }
    }

    private void Show(View view, bool isPassing)
    {
        var isNew = view.Sentence != View.Sentence;
        (View, IsPassing) = (view, isPassing);
        Follow(isNew);
    }

    private void Follow(bool isNew)
    {
        Tried = null;
        if (isNew)
        {
            var answer = Answer(View.Sentence);
            Error = answer.Errors is [var first, ..] ? first : null;
            if (answer.IsRead)
            {
                (_exhibit, ReadText, _said) = (answer.Value, View.Sentence, null);
            }
        }

        Built =
            View.Built.Count > 0 && View.Built.All(Exhibit.Map.Instrument.Has)
                ? new ShapeByHand(Exhibit.Player, Exhibit.Map.Key, View.Built)
                : null;
        Changed?.Invoke();
    }
}
