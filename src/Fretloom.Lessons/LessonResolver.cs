using Fretloom.Claims;
using Fretloom.Exhibits;
using Fretloom.Lessons.Syntax;
using Fretloom.Sentences;
using Fretloom.Theory;

namespace Fretloom.Lessons;

/// <summary>Works the tree of a lesson out in a key.</summary>
internal sealed class LessonResolver
{
    private readonly ParsedLesson _parsed;
    private readonly Key _key;
    private readonly DiagnosticList _found;
    private readonly List<LessonClaim> _claims = [];
    private int _figures;
    private readonly List<Block.Exercise> _exercises = [];

    public LessonResolver(ParsedLesson parsed, Key key)
    {
        _parsed = parsed;
        _key = key;
        _found = new DiagnosticList(parsed.Source);
        Front = parsed.Front.In(key);
        Blocks = Resolved(parsed.Blocks);
        Claims = _claims.ToValueList();
        Exercises = _exercises.ToValueList();
        Diagnostics = parsed
            .Diagnostics.Concat(IsHome ? [] : parsed.InOtherKeys)
            .Concat(_found.InOrder())
            .Distinct()
            .OrderBy(found => found.Line)
            .ThenBy(found => found.Column)
            .ToValueList();
    }

    /// <summary>The front matter, filled in.</summary>
    public FrontMatter Front { get; }

    /// <summary>The tree, worked out.</summary>
    public ValueList<Block> Blocks { get; }

    /// <summary>The claims that could be checked.</summary>
    public ValueList<LessonClaim> Claims { get; }

    /// <summary>The exercises that can be played.</summary>
    public ValueList<Block.Exercise> Exercises { get; }

    /// <summary>Everything found, while reading and while working out.</summary>
    public ValueList<Diagnostic> Diagnostics { get; }

    private bool IsHome => _key == _parsed.HomeKey;

    private string? Fill(string? text) => text is null ? null : KeyWords.Fill(text, _key);

    private ValueList<Block> Resolved(ValueList<Block> blocks) => blocks.Select(Resolved).ToValueList();

    private Block Resolved(Block block) =>
        block switch
        {
            Block.Heading heading => heading with { Content = Resolved(heading.Content) },
            Block.Paragraph paragraph => paragraph with { Content = Resolved(paragraph.Content) },
            Block.Quote quote => quote with { Content = Resolved(quote.Content) },
            Block.Listing list => list with { Entries = list.Entries.Select(Resolved).ToValueList() },
            Block.Table table => table with
            {
                Header = table.Header.Select(Resolved).ToValueList(),
                Rows = table.Rows.Select(row => row.Select(Resolved).ToValueList()).ToValueList(),
            },
            Block.Show show => Worked(show),
            Block.Claim claim => Checked(claim),
            Block.Play play => Worked(play),
            _ => block,
        };

    private ValueList<Inline> Resolved(ValueList<Inline> content) => content.Select(Resolved).ToValueList();

    private Inline Resolved(Inline inline) =>
        inline switch
        {
            Inline.InKey inKey => new Inline.Text(inKey.Words.In(_key)),
            Inline.Emphasis emphasis => new Inline.Emphasis(Resolved(emphasis.Content)),
            Inline.Strong strong => new Inline.Strong(Resolved(strong.Content)),
            Inline.Link link => link with { Content = Resolved(link.Content) },
            _ => inline,
        };

    private Block Worked(Block.Show show)
    {
        var resolution = Resolve(show);
        if (!resolution.IsShown)
        {
            var message = InThisKey(resolution.Error.Message);
            return Problem(show.Line, show.Sentence.OffsetOf(resolution.Error.Phrase), message);
        }

        if (resolution.Exhibit.WhatIsMissing is { } missing)
        {
            _found.Warning(show.Sentence.OffsetOf(ShowPhrase.Subject), InThisKey(missing));
        }

        var options = show.Options with
        {
            Caption = Fill(show.Options.Caption),
            Title = Fill(show.Options.Title),
            Alt = Fill(show.Options.Alt),
        };
        return new Block.Figure(show.Line, ++_figures, resolution.Exhibit, options);
    }

    private Block.Problem Problem(int line, int offset, string message)
    {
        var before = _found.Count;
        _found.Error(offset, message);
        return new Block.Problem(line, message) { At = _found.LineAfter(before) };
    }

    // A claim speaks of its own keys, so it comes out the same in every key of the lesson.
    private Block Checked(Block.Claim claim)
    {
        var before = _found.Count;
        var (verdict, refusal) = _parsed.Verdicts.Of(claim.Said.Sentence);
        if (verdict is null)
        {
            if (_parsed.Verdicts.PutsOff(claim.Said.Sentence))
            {
                _found.Warning(claim.Said.Offset, refusal!);
            }
            else
            {
                _found.Error(claim.Said.Offset, refusal!);
            }

            return new Block.Problem(claim.Line, refusal!) { At = _found.LineAfter(before) };
        }

        var said = new LessonClaim(claim.Line, verdict, claim.Options.ExpectsFailure);
        _claims.Add(said);
        if (!said.IsAsExpected)
        {
            var message = WhatIsWrong(said);
            if (said.ExpectsFailure)
            {
                _found.Error(claim.Options.ExpectOffset, message);
            }
            else
            {
                _found.Error(claim.Said.Offset, claim.Said.Length, message, Mended(claim.Said, verdict));
            }

            return new Block.Problem(claim.Line, message) { At = _found.LineAfter(before) };
        }

        if (verdict.Verdict == Verdict.NothingToTest)
        {
            _found.Warning(claim.Said.Offset, $"{verdict.Summary}: what this claim speaks of is nowhere to be found.");
        }

        var options = claim.Options with { Caption = Fill(claim.Options.Caption), Title = Fill(claim.Options.Title) };
        return new Block.Statement(claim.Line, _claims.Count, verdict, _key, options);
    }

    private static LessonRepair? Mended(PlacedClaim said, ClaimVerdict verdict) =>
        verdict.Repair is { } repair ? new LessonRepair(said.Offset, said.Length, repair.Sentence.ToString()) : null;

    private static string WhatIsWrong(LessonClaim claim)
    {
        var verdict = claim.Verdict;
        return claim.ExpectsFailure
            ? $"This claim does not fail, as 'expect: fails' says it does. {verdict.Summary}."
            : string.Join(
                ' ',
                new[]
                {
                    $"{verdict.Summary}.",
                    verdict.Failures is [var first, ..] ? first.Why : null,
                    verdict.Repair?.Message,
                }.Where(part => part is not null)
            );
    }

    private Block Worked(Block.Play play)
    {
        var said = play.Said.Sentence;
        var material = Moved(said.Material, () => play.Said.OffsetOf(new PlayError("", ShowPhrase.Subject)));
        var resolution = Resolve(said with { Material = material });
        if (!resolution.IsPlayed)
        {
            var message = InThisKey(SentenceReader.Capital(resolution.Error.Message));
            return Problem(play.Line, play.Said.OffsetOf(resolution.Error), message);
        }

        var options = play.Options with { Caption = Fill(play.Options.Caption), Title = Fill(play.Options.Title) };
        var exercise = new Block.Exercise(play.Line, _exercises.Count + 1, resolution.Exercise, options);
        _exercises.Add(exercise);
        return exercise;
    }

    private Resolution Resolve(Block.Show show)
    {
        var said = WithCapo(show.Sentence.Sentence);
        var home = Resolve(said);
        return IsHome || !home.IsShown ? home : Resolve(Moved(said, () => show.Sentence.OffsetOf(ShowPhrase.Subject)));
    }

    private Resolution Resolve(ShowSentence sentence) =>
        _parsed.Memory?.Of(sentence, _parsed.Front.Defaults) ?? ShowResolver.Resolve(sentence, _parsed.Front.Defaults);

    private PlayResolution Resolve(PlaySentence sentence) =>
        _parsed.Memory?.Of(sentence, _parsed.Front.Defaults) ?? PlayResolver.Resolve(sentence, _parsed.Front.Defaults);

    /// <summary>A sentence carried to the key of the lesson, with the lesson's capo.</summary>
    private ShowSentence Moved(ShowSentence sentence, Func<int> place)
    {
        var said = WithCapo(sentence);
        if (IsHome)
        {
            return said;
        }

        var transposition = new Transposition(_parsed.HomeKey, _key);
        var defaults = _parsed.Front.Defaults;
        var moved = transposition.Move(said, ShowResolver.NeckOf(said, defaults), defaults.Frets);
        if (transposition.LeavesSpots(said, moved))
        {
            _found.Warning(
                place(),
                InThisKey(
                    "The spots stay where they are, since they do not fit the neck a key further; name the notes in another way."
                )
            );
        }

        return moved;
    }

    private ShowSentence WithCapo(ShowSentence sentence) =>
        sentence.Instrument is null ? sentence with { Capo = sentence.Capo ?? _parsed.Front.Capo } : sentence;

    private string InThisKey(string message) => IsHome ? message : $"In {_key}: {message}";
}
