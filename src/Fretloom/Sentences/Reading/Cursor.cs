namespace Fretloom.Sentences.Reading;

/// <summary>A place in the tokens of a sentence, moving forward.</summary>
internal sealed class Cursor(List<Token> tokens)
{
    private readonly List<Token> _tokens = tokens;
    private int _index;

    /// <summary>The beginning of a sentence.</summary>
    public Cursor(string text)
        : this(Tokens.Of(text)) { }

    /// <summary>The token here.</summary>
    public Token Current => _tokens[_index];

    /// <summary>The token before this one; the first one at the beginning.</summary>
    public Token Previous => _tokens[Math.Max(0, _index - 1)];

    /// <summary>Whether every token has been read.</summary>
    public bool IsAtEnd => Current.Kind == TokenKind.End;

    /// <summary>A token further on; the end when there are no more.</summary>
    public Token Peek(int ahead) => _tokens[Math.Min(_index + ahead, _tokens.Count - 1)];

    /// <summary>Whether this word stands here, in any case.</summary>
    public bool Is(string word) => Current.Is(word);

    /// <summary>Moves on, at most to the end.</summary>
    public void Skip(int count = 1) => _index = Math.Min(_index + count, _tokens.Count - 1);

    /// <summary>Moves past a token of a kind if it stands here.</summary>
    public bool Accept(TokenKind kind)
    {
        var stands = Current.Kind == kind && kind != TokenKind.End;
        Skip(stands ? 1 : 0);
        return stands;
    }

    /// <summary>Moves past these words if all of them stand here, in this order.</summary>
    public bool Accept(params ReadOnlySpan<string> words)
    {
        for (var at = 0; at < words.Length; at++)
        {
            if (!Peek(at).Is(words[at]))
            {
                return false;
            }
        }

        Skip(words.Length);
        return true;
    }

    /// <summary>Moves past one of these words if it stands here.</summary>
    public bool AcceptAny(params ReadOnlySpan<string> words)
    {
        var stands = Current.IsAny(words);
        Skip(stands ? 1 : 0);
        return stands;
    }

    /// <summary>The place of a token of this sentence.</summary>
    public Cursor BackTo(Token token) => new(_tokens) { _index = _tokens.IndexOf(token) };

    /// <summary>What was read from a token on, as one token.</summary>
    public Token Since(Token first) => new(TokenKind.Word, first.Start, Previous.End - first.Start, "");

    /// <summary>Some words from a place ahead on, separated by spaces.</summary>
    public string Words(int ahead, int count) =>
        string.Join(' ', Enumerable.Range(ahead, count).Select(at => Peek(at).Text));
}
