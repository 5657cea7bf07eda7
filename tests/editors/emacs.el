;;; emacs.el --- Emacs's eglot meets the language server -*- lexical-binding: t -*-

(require 'json)
(require 'flymake)
(unless (require 'eglot nil t)
  (princ "failed eglot is there: it is not installed on this machine\nfinished\n")
  (kill-emacs 1))

(defvar expected (json-read-file (getenv "TRIBRACH_EXPECTED")))

(defun expected (&rest keys)
  "The value under KEYS of what is expected."
  (seq-reduce (lambda (tree key) (alist-get key tree)) keys expected))

(define-derived-mode tribrach-mode text-mode "Tribrach")
(add-to-list 'auto-mode-alist '("\\.trib\\'" . tribrach-mode))
(add-to-list 'eglot-server-programs
             `(tribrach-mode . ("node" ,(getenv "TRIBRACH_SERVER") "serve" "--stdio")))

(defmacro check (name &rest body)
  "Report under NAME whether BODY runs without an error."
  `(condition-case problem
       (progn ,@body (princ (format "passed %s\n" ,name)))
     (error (princ (format "failed %s: %s\n" ,name
                           (replace-regexp-in-string "\n" " " (error-message-string problem)))))))

(defun eventually (what ask)
  "The first answer of ASK that is not nil, within 15 seconds; else an error that names WHAT."
  (let ((end (+ (float-time) 15)) answer)
    (while (and (not (setq answer (funcall ask))) (< (float-time) end))
      (accept-process-output nil 0.1))
    (or answer (error "Waited in vain for %s" what))))

(defun go-to (text)
  "Put point behind the first letter of TEXT."
  (goto-char (point-min))
  (search-forward text)
  (goto-char (1+ (match-beginning 0))))

(defun slips ()
  "The findings that eglot has for this file and that are the expected one."
  (flymake-start)
  (seq-filter (lambda (finding) (string-match-p (regexp-quote (expected 'finding 'code))
                                                (flymake-diagnostic-text finding)))
              (flymake-diagnostics)))

(defun ask (method &rest more)
  "Ask the server METHOD about point, with the parameters MORE."
  (jsonrpc-request (eglot-current-server) method
                   (append (eglot--TextDocumentPositionParams) more)))

(find-file (expected 'session))

(check "the server starts"
       (apply #'eglot--connect (eglot--guess-contact))
       (eventually "the connection" #'eglot-current-server)
       (eventually "eglot to manage the session" (lambda () eglot--managed-mode)))

(check "a slip in the file is found, at its place"
       (let ((slip (car (eventually "the finding" #'slips))))
         (goto-char (point-min))
         (search-forward (expected 'finding 'at))
         (unless (= (flymake-diagnostic-beg slip) (match-beginning 0))
           (error "It begins at %s" (flymake-diagnostic-beg slip)))))

(check "a hover tells the derivation"
       (go-to (expected 'hover 'at))
       (let ((text (format "%s" (ask :textDocument/hover))))
         (unless (string-search (expected 'hover 'says) text) (error "It says %s" text))))

(check "a fix leaves the right text and the finding leaves with it"
       (go-to (expected 'finding 'at))
       (let* ((slip (car (eventually "the finding" #'slips)))
              (actions (eglot-code-actions (flymake-diagnostic-beg slip) (flymake-diagnostic-end slip)))
              (fix (seq-find (lambda (action) (and (plist-get action :edit)
                                                   (string-search (expected 'fix 'offers) (plist-get action :title))))
                             actions)))
         (unless fix (error "No fix offers it: %s" actions))
         (eglot--apply-workspace-edit (plist-get fix :edit))
         (let ((line (buffer-substring-no-properties (line-beginning-position) (line-end-position))))
           (unless (equal line (expected 'fix 'leaves)) (error "It leaves %s" line)))
         (eglot--signal-textDocument/didChange)
         (eventually "the finding to leave" (lambda () (null (slips))))))

(check "a mark is renamed everywhere"
       (go-to (expected 'rename 'from))
       (eglot--signal-textDocument/didChange)
       (eglot-rename (expected 'rename 'to))
       (let ((old (how-many (regexp-quote (expected 'rename 'from)) (point-min) (point-max)))
             (new (how-many (regexp-quote (expected 'rename 'to)) (point-min) (point-max))))
         (unless (and (= old 0) (= new (expected 'rename 'places))) (error "%d old, %d new" old new))))

(check "the server ends when it is told to"
       (eglot-shutdown (eglot-current-server) nil 10))

(princ "finished\n")
(kill-emacs 0)
